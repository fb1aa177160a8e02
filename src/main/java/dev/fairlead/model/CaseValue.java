package dev.fairlead.model;

import java.util.List;

/** A fact in one of three states: known, unknown, or not applicable; never null. */
public sealed interface CaseValue permits Measured, Fact, Answer {
    /** True when the value is there. */
    boolean known();

    /** False only when the case says that the fact does not apply. */
    boolean applies();

    /**
     * True only when the case says that the fact does not apply; a positive statement, so that conditions may use it.
     */
    default boolean doesNotApply() {
        return !applies();
    }

    /** JSON Pointers of the facts that are missing; empty unless unknown. */
    List<String> missing();
}
