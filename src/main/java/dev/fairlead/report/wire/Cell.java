package dev.fairlead.report.wire;

import dev.fairlead.findings.Numbers;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.OptionalDouble;

/**
 * One entry of a table.
 *
 * @param text as it is shown
 * @param value the number behind it; unknown, with what is missing, or not applicable for mere words
 * @param to the upper end where it is a range
 */
public record Cell(String text, Measured value, OptionalDouble to) {
    /** A quantity with its unit and error, or that it is unknown. */
    static Cell of(Measured m) {
        return new Cell(m.applies() ? Numbers.text(m) : "-", m, OptionalDouble.empty());
    }

    /** The same with so many decimals. */
    static Cell of(Measured m, int decimals) {
        return m.known() ? new Cell(Numbers.text(m, decimals), m, OptionalDouble.empty()) : of(m);
    }

    static Cell of(double value, Unit unit) {
        return of(Measured.exact(value, unit));
    }

    /** From the smaller to the larger, in one unit. */
    static Cell range(double a, double b, Unit unit) {
        double low = Math.min(a, b);
        double high = Math.max(a, b);
        String first = Numbers.text(low, unit);
        String last = Numbers.text(high, unit);
        String number = unit.symbol().isEmpty()
                ? first
                : first.substring(0, first.length() - unit.symbol().length()).strip();
        return new Cell(
                first.equals(last) ? last : number + " to " + last, Measured.exact(low, unit), OptionalDouble.of(high));
    }

    static Cell words(String text) {
        return new Cell(text, Measured.notApplicable(), OptionalDouble.empty());
    }
}
