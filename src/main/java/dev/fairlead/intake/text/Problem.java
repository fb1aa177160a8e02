package dev.fairlead.intake.text;

import dev.fairlead.intake.spelling.Visible;
import java.util.Optional;

/**
 * One problem of an input file.
 *
 * @param pointer JSON Pointer (RFC 6901) of the value; for a field that is not part of the format, of that field
 * @param line line in the file from 1; 0 when the problem has no place
 * @param column column in the line from 1
 * @param expected what should stand there
 * @param found what stands there; never repeats what may tell who the patient is
 * @param slip the likely cause
 * @param mend what to do
 */
public record Problem(
        Severity severity,
        String pointer,
        int line,
        int column,
        String expected,
        String found,
        Optional<String> slip,
        String mend) {
    public Problem {
        // what is quoted from a file must not steer the terminal or turn the line around
        pointer = Visible.of(pointer);
        expected = Visible.of(expected);
        found = Visible.of(found);
        slip = slip.map(Visible::of);
        mend = Visible.of(mend);
    }

    public boolean error() {
        return severity == Severity.ERROR;
    }

    public Problem at(int newLine, int newColumn) {
        return new Problem(severity, pointer, newLine, newColumn, expected, found, slip, mend);
    }

    /** One line of text: place, expected, found, likely slip, mend. */
    @Override
    public String toString() {
        return (line > 0 ? line + ":" + column + " " : "") + (pointer.isEmpty() ? "(whole case)" : pointer)
                + ": expected " + expected + ", found " + found
                + slip.map(s -> "; likely " + s).orElse("") + (mend.isEmpty() ? "" : "; " + mend);
    }
}
