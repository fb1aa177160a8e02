package dev.fairlead.findings;

import dev.fairlead.model.Choice;

/**
 * A problem of the input, for the report.
 *
 * @param pointer JSON Pointer of the value
 * @param line line in the file from 1; 0 when it has no place
 * @param column column in the line from 1; 0 when it has no place
 */
public record InputNote(Severity severity, String pointer, int line, int column, String text) {
    /** Whether the case can be judged all the same. */
    public enum Severity implements Choice {
        ERROR,
        WARNING,
        NOTE
    }
}
