package dev.fairlead.intake.spelling;

/** The words and limits of the case format that reading, writing and typing share. */
public final class CaseWords {
    /** The word for a fact that was looked for and is not known. */
    public static final String UNKNOWN = "unknown";
    /** The word for a fact that there cannot be. */
    public static final String DOES_NOT_APPLY = "does-not-apply";
    /** The one version of the case format. */
    public static final int FORMAT = 1;

    /** Characters of a free text. */
    public static final int LONGEST_TEXT = 1000;
    /** Dates outside these years are slips: no record of a child in care is older, and no plan reaches further. */
    public static final int FIRST_YEAR = 2000;

    public static final int LAST_YEAR = 2099;

    private CaseWords() {}
}
