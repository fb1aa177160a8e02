package dev.fairlead.audit.cohort;

import java.util.List;

/**
 * What was planted in a case.
 *
 * @param criterion the criterion that has to answer to it
 * @param kind whether that criterion has to warn, or cannot be assessed
 * @param says what was done to the case
 * @param follows other criteria that end in the same way as a plain consequence
 */
public record Planted(String criterion, Kind kind, String says, List<String> follows) {
    /** How the criterion has to end. */
    public enum Kind implements dev.fairlead.model.Choice {
        WARNS,
        NOT_ASSESSED
    }
}
