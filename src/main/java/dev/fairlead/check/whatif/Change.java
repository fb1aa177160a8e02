package dev.fairlead.check.whatif;

import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.Words;
import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.measure.working.Say;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
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
    /** Fields that go no higher are sizes of wire and slot, which people know in inches, mm. */
    private static final double FINE_MM = 1.5;

    /** The change of a case's field to a plain value: a number in the field's unit, a word, a date. */
    static Change of(Case c, String pointer, Object value) {
        return new Change(
                pointer, Words.of(pointer), text(c, pointer), text(Edit.set(c, pointer, value), pointer), value);
    }

    /** What stands in a field of a case, for people. */
    static String text(Case c, String pointer) {
        Object held = Edit.get(c, pointer);
        if (held instanceof Measured m) {
            return m.known() ? number(m, pointer) : m.applies() ? "unknown" : "does not apply";
        }
        if (held instanceof Fact<?> f) {
            return f.known()
                    ? f.get() instanceof dev.fairlead.model.Choice choice
                            ? choice.word()
                            : f.get().toString()
                    : f.applies() ? "unknown" : "does not apply";
        }
        if (held instanceof dev.fairlead.model.Answer a) {
            return a.yes() ? "yes" : a.no() ? "no" : a.applies() ? "unknown" : "does not apply";
        }
        return String.valueOf(held);
    }

    /** Without its error, for what is planned is meant as it stands; sizes of wire and slot in inches as well. */
    private static String number(Measured m, String pointer) {
        String symbol = m.unit().symbol();
        boolean fine = m.unit() == Unit.MM
                && CasePaths.field(pointer)
                        .filter(f -> f.about().high() <= FINE_MM)
                        .isPresent();
        return Say.num(m.value())
                + (symbol.isEmpty() || symbol.equals("°") ? symbol : " " + symbol)
                + (fine ? " (" + Numbers.text(Unit.MM.to(Unit.INCH, m.value()), Unit.INCH) + ")" : "");
    }

    /** The case with the change made. */
    Case in(Case c) {
        return Edit.set(c, pointer, value);
    }
}
