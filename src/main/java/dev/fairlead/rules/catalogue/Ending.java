package dev.fairlead.rules.catalogue;

/**
 * How a criterion ends with the weight of its warning, heaviest first; over places the first of these counts. A rule
 * reports all but {@link #NOT_ASSESSED} and {@link #FAILED}, which are what its silence and its errors come to.
 */
public enum Ending {
    STOP(Status.WARN),
    CAUTION(Status.WARN),
    NOT_ASSESSED(Status.NOT_ASSESSED),
    PASS(Status.PASS),
    DOES_NOT_APPLY(Status.DOES_NOT_APPLY),
    /** It could not be judged because of an error of our own. */
    FAILED(Status.NOT_ASSESSED);

    private final Status status;

    Ending(Status status) {
        this.status = status;
    }

    /** The same without the weight. */
    public Status status() {
        return status;
    }

    public boolean warns() {
        return status == Status.WARN;
    }
}
