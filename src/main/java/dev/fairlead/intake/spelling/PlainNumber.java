package dev.fairlead.intake.spelling;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads decimal numbers from outside, and bounds them: an exponent beyond reason would fill the memory when it is
 * written out, or end as a zero that nobody wrote.
 */
public final class PlainNumber {
    /** Digits, point, signs and exponent together. */
    public static final int LONGEST = 40;

    /** No quantity of a case, in any unit, is beyond ten to this power, or finer than its inverse. */
    private static final int MOST_EXPONENT = 15;

    private static final Pattern PLAIN =
            Pattern.compile("[+-]?(?:(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE]([+-]?[0-9]+))?");

    private PlainNumber() {}

    /** True for a number as JSON writes it, with or without a plus sign or a zero before the point. */
    public static boolean is(String raw) {
        return PLAIN.matcher(raw).matches();
    }

    /** The number, exact; null when the text is none, or one beyond those bounds. */
    public static @Nullable BigDecimal read(String raw) {
        if (raw.length() > LONGEST) {
            return null;
        }
        var m = PLAIN.matcher(raw);
        if (!m.matches()) {
            return null;
        }
        String exponent = m.group(1);
        if (exponent != null) {
            String digits = exponent.replaceFirst("^[+-]?0*", "");
            if (digits.length() > 2 || !digits.isEmpty() && Integer.parseInt(digits) > MOST_EXPONENT) {
                return null;
            }
        }
        return new BigDecimal(raw);
    }
}
