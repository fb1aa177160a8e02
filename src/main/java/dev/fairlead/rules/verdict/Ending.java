package dev.fairlead.rules.verdict;

import dev.fairlead.rules.catalogue.Outcome;

/** How a criterion ends with the weight of its warning, heaviest first; over places the first of these counts. */
public enum Ending {
    STOP(Status.WARN),
    CAUTION(Status.WARN),
    NOT_ASSESSED(Status.NOT_ASSESSED),
    PASS(Status.PASS),
    DOES_NOT_APPLY(Status.DOES_NOT_APPLY),
    FAILED(Status.NOT_ASSESSED);

    private final Status status;

    Ending(Status status) {
        this.status = status;
    }

    static Ending of(Outcome outcome) {
        return valueOf(outcome.name());
    }

    /** The ending of a criterion over all its places. */
    public static Ending of(CriterionResult result) {
        return switch (result.status()) {
            case WARN -> result.stop() ? STOP : CAUTION;
            case NOT_ASSESSED -> result.failed() ? FAILED : NOT_ASSESSED;
            case PASS -> PASS;
            case DOES_NOT_APPLY -> DOES_NOT_APPLY;
        };
    }

    /** The same without the weight. */
    Status status() {
        return status;
    }

    public boolean warns() {
        return status == Status.WARN;
    }
}
