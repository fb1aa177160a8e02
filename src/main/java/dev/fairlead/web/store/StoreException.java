package dev.fairlead.web.store;

import java.util.Objects;

/** Why the folder of cases could not do what was asked, and what a person can do about it. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String mend;

    StoreException(String message, String mend) {
        super(message);
        this.mend = mend;
    }

    StoreException(String message, String mend, Throwable cause) {
        super(message, cause);
        this.mend = mend;
    }

    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }

    /** What to do, in a sentence. */
    public String mend() {
        return mend;
    }
}
