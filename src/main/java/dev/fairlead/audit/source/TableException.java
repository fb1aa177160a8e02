package dev.fairlead.audit.source;

/** A table, a row of one, or another source that cannot be read; the message is for people. */
public final class TableException extends Exception {
    private static final long serialVersionUID = 1L;

    public TableException(String message) {
        super(message);
    }
}
