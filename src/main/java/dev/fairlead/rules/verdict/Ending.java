package dev.fairlead.rules.verdict;

/** How a criterion ends with the weight of its warning, heaviest first; over places the first of these counts. */
public enum Ending {
    STOP,
    CAUTION,
    NOT_ASSESSED,
    PASS,
    DOES_NOT_APPLY,
    FAILED;

    static Ending of(PlaceResult place) {
        return of(place.status(), place.stop());
    }

    /** The ending of a criterion over all its places. */
    public static Ending of(CriterionResult result) {
        return result.failed() ? FAILED : of(result.status(), result.stop());
    }

    private static Ending of(Status status, boolean stop) {
        return switch (status) {
            case WARN -> stop ? STOP : CAUTION;
            case NOT_ASSESSED -> NOT_ASSESSED;
            case PASS -> PASS;
            case DOES_NOT_APPLY -> DOES_NOT_APPLY;
        };
    }

    public boolean warns() {
        return this == STOP || this == CAUTION;
    }
}
