package dev.fairlead.intake.spelling;

import dev.fairlead.model.Field;
import dev.fairlead.model.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Guesses how a value came to lie outside its range: the wrong unit, a shifted point, a lost sign. */
public final class Slips {
    private record Guess(String words, double factor) {}

    private static final double RADIAN = 180 / Math.PI;

    private Slips() {}

    private static List<Guess> guesses(Unit.Dimension dimension) {
        return switch (dimension) {
            case LENGTH ->
                List.of(new Guess("inches in a field in mm", 25.4), new Guess("centimetres in a field in mm", 10));
            case ANGLE -> List.of(new Guess("radians in a field in degrees", RADIAN));
            case SHARE -> List.of(new Guess("a share of 1 in a field in per cent", 100));
            case FORCE ->
                List.of(
                        new Guess("newtons in a field in gf", Unit.NEWTON.to(Unit.GF, 1)),
                        new Guess("centinewtons in a field in gf", Unit.CENTINEWTON.to(Unit.GF, 1)));
            case STRESS -> List.of(new Guess("GPa in a field in MPa", 1000), new Guess("MPa in a field in GPa", 0.001));
            case AGE -> List.of(new Guess("months in a field in years", 1.0 / 12));
            case TIME ->
                List.of(new Guess("days in a field in weeks", 1.0 / 7), new Guess("weeks in a field in days", 7));
            case COUNT, RATIO -> List.of();
        };
    }

    /**
     * Likely causes for a value outside the field's range, with the value that was then meant; empty when none fits.
     */
    public static Optional<String> outOfRange(double value, Field field, boolean unitStated) {
        if (field.unit() == Unit.YEAR && value >= 1900 && value <= 2100) {
            return Optional.of("a year of birth, which does not belong in a case");
        }
        List<String> found = new ArrayList<>();
        if (unitStated && field.unit().dimension() == Unit.Dimension.LENGTH) {
            consider(found, new Guess("a millimetre value marked as inches", 1 / 25.4), value, field);
            consider(found, new Guess("a value in mm marked as cm", 0.1), value, field);
        } else if (!unitStated
                && field.unit().dimension() == Unit.Dimension.LENGTH
                && value > field.high()
                && value == Math.rint(value)) {
            // a whole number: the point was lost in writing, which is likelier than another unit
            consider(found, new Guess("a lost decimal point", 0.1), value, field);
        }
        if (!unitStated && found.isEmpty()) {
            for (Guess g : guesses(field.unit().dimension())) {
                consider(found, g, value, field);
            }
        }
        if (found.isEmpty()) {
            consider(found, new Guess("a lost or shifted decimal point", 0.1), value, field);
            consider(found, new Guess("a lost or shifted decimal point", 10), value, field);
        }
        if (found.isEmpty()) {
            consider(found, new Guess("a lost or shifted decimal point", 0.01), value, field);
            consider(found, new Guess("a lost or wrong sign", -1), value, field);
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(String.join(", or ", found));
    }

    private static void consider(List<String> found, Guess g, double value, Field field) {
        double meant = value * g.factor();
        if (value != 0 && meant >= field.low() && meant <= field.high()) {
            found.add(g.words() + " (" + number(meant) + " " + field.unit().symbol() + ")");
        }
    }

    /**
     * A cause for a value that lies in the range but hardly means what it says; only for a plain number without a unit.
     */
    public static Optional<String> inRange(double value, Field field) {
        if (field.unit() == Unit.PERCENT && value > 0 && value <= 1) {
            return Optional.of("a share of 1 in a field in per cent (" + number(value * 100) + " %)");
        }
        double asNewton = Unit.NEWTON.to(Unit.GF, value);
        if (field.unit() == Unit.GF && value > 0 && value < 10 && asNewton <= field.high()) {
            return Optional.of("newtons in a field in gf (" + number(asNewton) + " gf)");
        }
        return Optional.empty();
    }

    /** A number for a message: at most four digits, no exponent. */
    public static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The range of a field in words. */
    public static String range(Field f) {
        String unit = f.unit().symbol().isEmpty() ? "" : " " + f.unit().symbol();
        return plain(f.low()) + " to " + plain(f.high()) + unit;
    }

    private static String plain(double v) {
        return new BigDecimal(Double.toString(v)).stripTrailingZeros().toPlainString();
    }
}
