package dev.fairlead.findings;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Threshold;

/**
 * How numbers are written, everywhere: fixed decimals by unit, a point, never an exponent; the same in every locale.
 */
public final class Numbers {
    /** Thresholds that change in steps finer than this are sizes of wire and slot, which people know in inches. */
    private static final double WIRE_STEP_MM = 0.01;

    private static final int MOST_DECIMALS = 6;
    private static final int INCH_DECIMALS = 4;

    private Numbers() {}

    /** Decimals that values of a unit are written with. */
    public static int decimals(Unit unit) {
        return switch (unit) {
            case MM, DEGREE, YEAR, MONTH, WEEK -> 1;
            case INCH -> 3;
            case RATIO, NEWTON -> 2;
            default -> 0;
        };
    }

    /** Decimals of values held against a threshold: never coarser than its step. */
    static int decimals(Threshold threshold) {
        int decimals = decimals(threshold.unit());
        while (decimals < Decimal.MOST && !Decimal.exact(threshold.step(), decimals)) {
            decimals++;
        }
        return decimals;
    }

    /** A value with its unit. */
    public static String text(double value, Unit unit) {
        return text(value, unit, decimalsOf(value, unit));
    }

    /** A quantity with unit and, where it has one, its standard error; or that it is unknown. */
    public static String text(Measured m) {
        return m.known() ? text(m, decimalsOf(m.value(), m.unit())) : m.applies() ? "unknown" : "does not apply";
    }

    /** A known quantity with so many decimals. */
    public static String text(Measured m, int decimals) {
        return withUnit(plain(m.value(), decimals) + error(m.sd(), decimals), m.unit());
    }

    static String text(double value, Unit unit, int decimals) {
        return withUnit(plain(value, decimals), unit);
    }

    /**
     * A value beside the threshold that it is held against; more decimals where rounding would make it look equal to
     * the limit.
     */
    static String beside(Measured m, Threshold t) {
        return text(m, decimals(t, m.value(), t.value())) + inches(m.value(), t);
    }

    /** The same of a value that is told with the opposite sign, as "short" of a negative "over". */
    static String oppositeBeside(Measured m, Threshold t) {
        Measured opposite = m.times(-1);
        return text(opposite, decimals(t, m.value(), t.value())) + inches(opposite.value(), t);
    }

    private static int decimals(Threshold t, double value, double limit) {
        return apart(value, limit, decimals(t));
    }

    /** So many decimals or more that two numbers which differ do not look equal. */
    private static int apart(double a, double b, int decimals) {
        int enough = decimals;
        if (Math.abs(a - b) > Measured.ROUNDING) {
            while (enough < MOST_DECIMALS && plain(a, enough).equals(plain(b, enough))) {
                enough++;
            }
        }
        return enough;
    }

    /** A distance to a threshold; more decimals where rounding would make nothing of it. */
    static String apart(double distance, Threshold t) {
        int decimals = decimals(t);
        while (distance > Measured.ROUNDING
                && decimals < MOST_DECIMALS
                && plain(distance, decimals).equals(plain(0, decimals))) {
            decimals++;
        }
        return text(distance, t.unit(), decimals);
    }

    /** The value of a threshold with its unit. */
    public static String text(Threshold t) {
        return text(t.value(), t.unit(), decimals(t)) + inches(t.value(), t);
    }

    /** The number alone. */
    public static String plain(double value, int decimals) {
        return Decimal.halfUp(value, decimals);
    }

    /** A chance in whole per cent; what is possible is never rounded to impossible or certain. */
    public static String chance(double chance) {
        double p = 100 * chance;
        return p > 0 && p < 1 ? "under 1 %" : p > 99 && p < 100 ? "over 99 %" : Math.round(p) + " %";
    }

    private static String inches(double mm, Threshold t) {
        if (t.unit() != Unit.MM || t.step() >= WIRE_STEP_MM) {
            return "";
        }
        double inches = Unit.MM.to(Unit.INCH, mm);
        int decimals = apart(inches, Unit.MM.to(Unit.INCH, t.value()), INCH_DECIMALS);
        String text = plain(inches, decimals);
        boolean whole = decimals == INCH_DECIMALS && text.endsWith("0");
        return " (" + (whole ? text.substring(0, text.length() - 1) : text) + " in)";
    }

    /** Counts and ratios have no unit that would tell them apart; a broken count shows that it is one. */
    private static int decimalsOf(double value, Unit unit) {
        return unit == Unit.COUNT && value != Math.rint(value) ? 2 : decimals(unit);
    }

    private static String error(double sd, int decimals) {
        String shown = sd == 0 ? "" : plain(sd, decimals);
        return shown.isEmpty() || shown.equals(plain(0, decimals)) ? "" : " ± " + shown;
    }

    private static String withUnit(String number, Unit unit) {
        boolean close = unit == Unit.DEGREE || unit.symbol().isEmpty();
        String shown = close && number.contains("±") && !unit.symbol().isEmpty() ? "(" + number + ")" : number;
        return shown + (close ? "" : " ") + unit.symbol();
    }
}
