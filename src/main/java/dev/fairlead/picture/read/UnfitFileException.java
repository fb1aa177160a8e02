package dev.fairlead.picture.read;

/** A file that is not measured on: what is wrong with it, and how to mend that. */
public final class UnfitFileException extends Exception {
    private static final long serialVersionUID = 1;

    private final String mend;

    public UnfitFileException(String what, String mend) {
        super(what);
        this.mend = mend;
    }

    /** What to do about it, a sentence. */
    public String mend() {
        return mend;
    }
}
