package dev.fairlead.testing;

import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Looks whether every value of a case lies in the range that its field states. */
public final class InRange {
    private InRange() {}

    /**
     * Pointer and value of each quantity outside its range, and of each fact that may not be stated not applicable but
     * is.
     */
    public static List<String> complaints(Case c) {
        List<String> found = new ArrayList<>();
        look(c, "", found);
        return found;
    }

    private static void look(Record record, String pointer, List<String> found) {
        for (FieldShape f : RecordShape.of(record.getClass()).fields()) {
            String at = pointer + "/" + f.key();
            Object value = f.get(record);
            if (value instanceof Measured m && m.known()) {
                check(f, at, m.value(), m, found);
                for (double r : m.repeats()) {
                    check(f, at, r, m, found);
                }
            }
            if (value instanceof CaseValue k && !k.applies() && !f.about().mayNotApply()) {
                found.add(at + " does not apply");
            } else if (value instanceof Record r) {
                look(r, at, found);
            } else if (value instanceof List<?> l) {
                for (int i = 0; i < l.size(); i++) {
                    look((Record) l.get(i), at + "/" + i, found);
                }
            } else if (value instanceof Map<?, ?> m) {
                m.forEach((k, v) -> look((Record) v, at + "/" + k, found));
            }
        }
    }

    private static void check(FieldShape f, String at, double value, Measured m, List<String> found) {
        if (value < f.about().low()
                || value > f.about().high()
                || m.unit() != f.about().unit()) {
            found.add(at + " = " + value + " " + m.unit());
        }
    }
}
