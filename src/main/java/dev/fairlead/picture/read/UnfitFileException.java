package dev.fairlead.picture.read;

import java.util.Objects;

/** A file that is not measured on: what is wrong with it, and how to mend that. */
public final class UnfitFileException extends Exception {
    private static final long serialVersionUID = 1;

    private final String mend;

    public UnfitFileException(String what, String mend) {
        super(what);
        this.mend = mend;
    }

    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }

    /** What to do about it, a sentence. */
    public String mend() {
        return mend;
    }
}
