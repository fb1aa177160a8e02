package dev.fairlead.model.shape;

/** The kinds of value that a component of a case record can hold. */
public enum Kind {
    /** A {@link dev.fairlead.model.Measured}. */
    QUANTITY,
    /** An {@link dev.fairlead.model.Answer}. */
    ANSWER,
    /** A {@code Fact} of an enum that is a {@link dev.fairlead.model.Choice}. */
    CHOICE,
    /** A {@code Fact<LocalDate>}. */
    DATE,
    /** A {@code Fact<String>}. */
    TEXT,
    /** A {@code Fact<Tooth>}. */
    TOOTH,
    /** A bare {@code int} that must be there. */
    FORMAT,
    /** A bare {@code String} that must be there. */
    ID,
    /** A nested record. */
    RECORD,
    /** A list of records. */
    LIST,
    /** A map from {@link dev.fairlead.model.Tooth} to a record. */
    TOOTH_MAP;

    /** True for a single fact that can be unknown. */
    public boolean fact() {
        return ordinal() <= TOOTH.ordinal();
    }
}
