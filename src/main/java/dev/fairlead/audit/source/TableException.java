package dev.fairlead.audit.source;

import dev.fairlead.intake.spelling.Visible;
import java.util.Objects;

/** A table, a row of one, or another source that cannot be read; the message is for people. */
public final class TableException extends Exception {
    private static final long serialVersionUID = 1L;

    public TableException(String message) {
        // it quotes cells, names of columns and of files
        super(Visible.of(message));
    }

    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
