package dev.fairlead.findings;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Fixed decimals, rounded half up as the number reads; long arithmetic where it is sure to give the same as exact
 * decimals.
 */
final class Decimal {
    /** Powers of ten that a double holds exactly. */
    private static final double[] TEN = {
        1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
    /** The most decimals that a number in use has. */
    static final int MOST = TEN.length - 1;

    /** Up to here a number times a power of ten is off by less than {@link #SURE}. */
    private static final double LARGEST = 1e8;
    /** Nearer to half a last digit than this, the decimals of the number itself decide. */
    private static final double SURE = 1e-6;

    private Decimal() {}

    /** A finite number with so many decimals, {@link #MOST} at most; zero without a sign. */
    static String halfUp(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only a finite number can be shown, not " + value);
        }
        double scaled = Math.abs(value) * TEN[decimals];
        double whole = Math.floor(scaled);
        if (!(scaled < LARGEST) || Math.abs(scaled - whole - 0.5) < SURE) {
            BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
            return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
        }
        long digits = (long) whole + (scaled - whole > 0.5 ? 1 : 0);
        return (value < 0 && digits > 0 ? "-" : "") + point(Long.toString(digits), decimals);
    }

    /** True for a number that has no more decimals than that. */
    static boolean exact(double value, int decimals) {
        return Math.rint(value * TEN[decimals]) / TEN[decimals] == value;
    }

    private static String point(String digits, int decimals) {
        if (decimals == 0) {
            return digits;
        }
        String all = digits.length() > decimals ? digits : "0".repeat(decimals + 1 - digits.length()) + digits;
        int whole = all.length() - decimals;
        return all.substring(0, whole) + "." + all.substring(whole);
    }
}
