package dev.fairlead.web.page;

import java.util.Objects;

/** A request that cannot be answered, told as a page that says what to do. */
public final class PageError extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int status;
    private final String mend;

    /** An HTTP status, what happened, and what to do about it. */
    public PageError(int status, String what, String mend) {
        super(what);
        this.status = status;
        this.mend = mend;
    }

    /** A finding was asked for that a case does not have. */
    public static PageError noFinding() {
        return new PageError(
                404,
                "This case has no finding of that name",
                "It may have been cleared meanwhile. Go back to the findings of the case.");
    }

    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }

    public int status() {
        return status;
    }

    public String mend() {
        return mend;
    }
}
