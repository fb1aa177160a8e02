package dev.fairlead.intake.spelling;

import dev.fairlead.model.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The spellings of units that a person may write behind a number, and their exact conversion. */
public final class UnitWords {
    /** A spelled unit: {@code scale} of {@code unit}. */
    public record Word(Unit unit, BigDecimal scale) {}

    private static final BigDecimal MONTHS_OF_A_YEAR = BigDecimal.valueOf(12);
    /** Below the 15-17 digits of a double, so that converting leaves no binary dust; far above any measurement. */
    private static final MathContext DIGITS = new MathContext(14);

    private static final Map<String, Word> WORDS = new HashMap<>();

    static {
        put(Unit.MM, "1", "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        put(Unit.MM, "10", "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        put(Unit.MM, "0.001", "µm", "μm", "um", "micron", "microns");
        put(Unit.INCH, "1", "in", "in.", "inch", "inches", "\"", "″", "”", "''");
        put(Unit.INCH, "0.001", "mil", "mils", "thou");
        put(Unit.DEGREE, "1", "°", "º", "deg", "deg.", "degree", "degrees");
        put(Unit.PERCENT, "1", "%", "percent", "per cent", "pct");
        // orthodontic gauges are marked in "g" and mean grams-force; no field of a case holds a mass
        put(Unit.GF, "1", "gf", "g", "gram-force", "grams-force", "gram", "grams");
        put(Unit.NEWTON, "1", "N", "newton", "newtons");
        put(Unit.CENTINEWTON, "1", "cN", "centinewton", "centinewtons");
        put(Unit.MPA, "1", "MPa", "N/mm²", "N/mm2", "N/mm^2");
        put(Unit.GPA, "1", "GPa");
        put(Unit.YEAR, "1", "y", "yr", "yrs", "year", "years");
        put(Unit.MONTH, "1", "month", "months", "mo");
        put(Unit.WEEK, "1", "week", "weeks", "wk", "wks", "w");
        put(Unit.DAY, "1", "day", "days", "d");
    }

    private UnitWords() {}

    private static void put(Unit unit, String scale, String... words) {
        Word word = new Word(unit, new BigDecimal(scale));
        for (String w : words) {
            WORDS.put(w, word);
        }
    }

    /** The unit spelled so, or null. Case counts where it changes the meaning. */
    public static @Nullable Word of(String spelled) {
        String word = spelled.strip();
        Word exact = WORDS.get(word);
        // "MM", "Inch", "GF" are plain; "n", "cn", "mpa", "gpa" too, since no other unit is written so
        return exact != null
                ? exact
                : WORDS.entrySet().stream()
                        .filter(e -> e.getKey().equalsIgnoreCase(word))
                        .map(Map.Entry::getValue)
                        .findFirst()
                        .orElse(null);
    }

    /** The value in {@code target}, or null when the two measure different things. */
    public static @Nullable BigDecimal convert(BigDecimal value, Word from, Unit target) {
        BigDecimal scaled = value.multiply(from.scale());
        if (from.unit() == Unit.MONTH && target == Unit.YEAR) {
            return scaled.divide(MONTHS_OF_A_YEAR, DIGITS);
        }
        if (from.unit().dimension() != target.dimension()) {
            return null;
        }
        return scaled.multiply(BigDecimal.valueOf(from.unit().to(target, 1))).round(DIGITS);
    }

    /** The same for a unit that is known to suit. */
    public static BigDecimal fitting(BigDecimal value, Word from, Unit target) {
        return Objects.requireNonNull(convert(value, from, target));
    }

    /** The most usual ways to write a unit of that dimension, for messages. */
    public static String usual(Unit unit) {
        return switch (unit.dimension()) {
            case LENGTH -> "mm, cm or in";
            case ANGLE -> "°";
            case SHARE -> "%";
            case FORCE -> "gf, cN or N";
            case STRESS -> "MPa or GPa";
            case AGE -> "y";
            case TIME -> "days, weeks or months";
            case COUNT, RATIO -> "no unit";
        };
    }
}
