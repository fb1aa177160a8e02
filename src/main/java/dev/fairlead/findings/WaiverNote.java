package dev.fairlead.findings;

import dev.fairlead.model.Choice;

/**
 * A waiver that does not hold, or could not be weighed, and why.
 *
 * @param pointer JSON Pointer of the waiver in the case
 * @param criterion the criterion that it names; empty when it names none
 * @param text one sentence for people
 */
public record WaiverNote(String pointer, String criterion, Kind kind, String text) {
    /** Why a waiver does not hold. */
    public enum Kind implements Choice {
        INCOMPLETE,
        UNDATED,
        UNKNOWN_CRITERION,
        NOT_JUDGED,
        EXPIRED,
        NOT_YET,
        NO_SUBSTANCE,
        WRONG_ROLE,
        NOTHING_TO_WAIVE,
        TWICE
    }
}
