package dev.fairlead.check.whatif;

import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.Words;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;

/**
 * Another value for one field of a case.
 *
 * @param pointer JSON Pointer (RFC 6901) of the field
 * @param words the same for people
 * @param from what stands there, as written for people
 * @param to what would stand there
 * @param value the new value as {@link Edit#set} takes it
 */
public record Change(String pointer, String words, String from, String to, Object value) {
    /** The change of a case's field to a plain value: a number in the field's unit, a word, a date. */
    static Change of(Case c, String pointer, Object value) {
        Case changed = Edit.set(c, pointer, value);
        return new Change(pointer, Words.of(pointer), text(Edit.get(c, pointer)), text(Edit.get(changed, pointer)), value);
    }

    /** What stands in a field, for people. */
    static String text(Object held) {
        if (held instanceof Measured m) {
            return m.known() ? number(m) : m.applies() ? "unknown" : "does not apply";
        }
        if (held instanceof Fact<?> f) {
            return f.known() ? f.get() instanceof dev.fairlead.model.Choice choice ? choice.word() : f.get().toString()
                    : f.applies() ? "unknown" : "does not apply";
        }
        if (held instanceof dev.fairlead.model.Answer a) {
            return a.yes() ? "yes" : a.no() ? "no" : a.applies() ? "unknown" : "does not apply";
        }
        return String.valueOf(held);
    }

    /** Without its error: what is planned is meant as it stands. */
    private static String number(Measured m) {
        return Numbers.text(Measured.exact(m.value(), m.unit()));
    }

    /** The case with the change made. */
    Case in(Case c) {
        return Edit.set(c, pointer, value);
    }
}
