package dev.fairlead.web.store;

/** Another version stands in the folder than the one that a save was made from. */
public final class StaleException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Stored present;

    /** {@code present} is what stands there now. */
    public StaleException(Stored present) {
        super(present.name() + " was changed meanwhile");
        this.present = present;
    }

    /** What stands there now. */
    public Stored present() {
        return present;
    }
}
