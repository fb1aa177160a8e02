package dev.fairlead.report.wire;

import dev.fairlead.findings.Numbers;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.Optional;

/**
 * One entry of a table.
 *
 * @param text as it is shown
 * @param value the number behind it; unknown, with what is missing, or not applicable for mere words
 * @param to the upper end where it is a range
 */
public record Cell(String text, Measured value, Optional<Measured> to) {
    /** A quantity with its unit and error, or that it is unknown. */
    static Cell of(Measured m) {
        return new Cell(m.applies() ? Numbers.text(m) : "-", m, Optional.empty());
    }

    /** The same with so many decimals. */
    static Cell of(Measured m, int decimals) {
        return m.known() ? new Cell(Numbers.text(m, decimals), m, Optional.empty()) : of(m);
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
                first.equals(last) ? last : number + " to " + last,
                Measured.exact(low, unit),
                Optional.of(Measured.exact(high, unit)));
    }

    /** From one quantity to another of the same unit, each with its error. */
    static Cell between(Measured low, Measured high) {
        String first = Numbers.text(low);
        String unit = " " + low.unit().symbol();
        return new Cell(
                (low.unit().symbol().isEmpty() ? first : first.substring(0, first.length() - unit.length())) + " to "
                        + Numbers.text(high),
                low,
                Optional.of(high));
    }

    static Cell words(String text) {
        return new Cell(text, Measured.notApplicable(), Optional.empty());
    }
}
