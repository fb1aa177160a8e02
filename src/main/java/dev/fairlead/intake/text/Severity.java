package dev.fairlead.intake.text;

/** How much a problem of the input weighs. */
public enum Severity {
    /** The case cannot be read as it stands. */
    ERROR,
    /** The case is read, and a person should look again. */
    DOUBT
}
