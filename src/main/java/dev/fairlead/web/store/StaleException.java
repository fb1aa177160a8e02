package dev.fairlead.web.store;

/** Another version stands in the folder than the one that a save was made from. */
public final class StaleException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Of the case of that name. */
    public StaleException(String name) {
        super(name + " was changed meanwhile");
    }
}
