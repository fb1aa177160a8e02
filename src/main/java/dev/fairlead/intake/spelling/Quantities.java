package dev.fairlead.intake.spelling;

import dev.fairlead.model.Field;
import dev.fairlead.model.Unit;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads a quantity as a person types it: {@code "0.020 in"}, {@code "0,508 mm"}, {@code ".020\""}, {@code "24°"},
 * {@code "4 weeks"}.
 *
 * <p>It is strict on purpose. Parsers made for one country's numbers read "0,508" as 508; here whatever has two
 * readings is refused with both of them. Conversion is decimal: one inch is exactly 25.4 mm (international yard and
 * pound agreement of 1959), so 0.020 in is the double 0.508.
 */
public final class Quantities {
    /** The form of a quantity in text; the JSON Schema uses it as well. Group 1 is the number, group 2 the unit. */
    public static final String FORM =
            "^\\s*([+\\-\u2212]?(?:(?:0|[1-9][0-9]{0,11})(?:[.,][0-9]{1,12})?|[.,][0-9]{1,12}))\\s*([^\\s0-9.,+\\-].{0,20})?$";

    private static final Pattern QUANTITY = Pattern.compile(FORM);
    private static final Pattern THOUSANDS = Pattern.compile("[+\\-\u2212]?[1-9][0-9]{0,2},[0-9]{3}");

    private static final Pattern WITH_ERROR =
            Pattern.compile("([-+\u2212]?\\d+(?:[.,]\\d+)?)[^±]{0,6}(?:±|\\+/?[-\u2212])");
    private static final Pattern HEXADECIMAL = Pattern.compile("(?i)[+-]?0[xob][0-9a-f_]+");

    private Quantities() {}

    /**
     * A quantity read from text, or why it was not.
     *
     * @param value in the unit asked for; NaN when it was refused
     * @param unitStated true when the text names its unit
     * @param unit the unit that the text names, else the one asked for
     * @param complaint why it was refused; empty when it was read
     * @param slip the likely cause; may be empty
     * @param mend what to write instead; may be empty
     */
    public record Typed(double value, boolean unitStated, Unit unit, String complaint, String slip, String mend) {
        public boolean ok() {
            return complaint.isEmpty();
        }

        private static Typed refused(String complaint, String slip, String mend) {
            return new Typed(Double.NaN, false, Unit.COUNT, complaint, slip, mend);
        }
    }

    /**
     * Reads a quantity for a field: the result is in the field's unit, and the field's range settles what a comma may
     * mean.
     */
    public static Typed read(String text, Field field) {
        return read(text, field.unit(), field.low(), field.high());
    }

    /** Reads a quantity into {@code unit}; {@code low} and {@code high}, in that unit, settle what a comma may mean. */
    public static Typed read(String text, Unit unit, double low, double high) {
        if (text.isBlank()) {
            return Typed.refused("nothing", "", "write a number, or unknown");
        }
        Matcher error = text.indexOf('±') > 0 || text.indexOf('+') > 0 ? WITH_ERROR.matcher(text) : null;
        if (error != null && error.find()) {
            return Typed.refused(
                    "an error behind the value",
                    "",
                    "write it in parts, such as {value: " + error.group(1).replace(',', '.')
                            + ", error: 0.5}, with one standard deviation");
        }
        Matcher m = QUANTITY.matcher(text.stripTrailing());
        if (!m.matches() || HEXADECIMAL.matcher(text.strip()).matches()) {
            return malformed(text.strip(), unit);
        }
        String number = m.group(1);
        UnitWords.Word word = m.group(2) == null ? new UnitWords.Word(unit, BigDecimal.ONE) : UnitWords.of(m.group(2));
        if (word == null) {
            // no unit at all, but the rest of a fraction, a time, an exponent, a span, or a side
            if (m.group(2).strip().matches("(?i)left|right|l|r|.*\\d.*")) {
                return malformed(text.strip(), unit);
            }
            return Typed.refused(
                    "the unit \"" + m.group(2).strip() + "\"",
                    m.group(2).strip().equals("m") ? "\"m\" may be metres, minutes or months" : "",
                    "use " + UnitWords.usual(unit));
        }
        BigDecimal value = convert(number.replace(',', '.'), word, unit);
        if (value == null) {
            return Typed.refused(
                    "a value in " + m.group(2).strip(), "a value of another field", "use " + UnitWords.usual(unit));
        }
        double result = value.doubleValue();
        if (THOUSANDS.matcher(number).matches() && unit.dimension() != Unit.Dimension.LENGTH) {
            double other = Objects.requireNonNull(convert(number.replace(",", ""), word, unit))
                    .doubleValue();
            if (other >= low && other <= high) {
                return Typed.refused(
                        "\"" + text.strip() + "\", which can be read in two ways",
                        "a comma between thousands, or a decimal comma",
                        "write " + number.replace(",", "") + " or " + number.replace(',', '.'));
            }
        }
        return new Typed(result + 0.0, m.group(2) != null, word.unit(), "", "", "");
    }

    /** The unit spelled so, for a quantity written in parts; null when it is none. */
    public static UnitWords.@Nullable Word unit(String spelled) {
        return UnitWords.of(spelled);
    }

    private static @Nullable BigDecimal convert(String number, UnitWords.Word from, Unit to) {
        String plain = number.replace('\u2212', '-');
        return UnitWords.convert(new BigDecimal(plain), from, to);
    }

    private static Typed malformed(String t, Unit unit) {
        String quoted = "\"" + (t.length() > 40 ? t.substring(0, 40) + "…" : t) + "\"";
        if (t.matches("[^.,]*\\d[.,]\\d.*[.,]\\d.*")) {
            return Typed.refused(
                    quoted + ", with more than one separator",
                    "a separator between thousands",
                    "write the number without separators between thousands, with one point or comma before the decimals");
        }
        if (t.matches("[+-]?\\d{1,3}([ '\u2019_\u00a0]\\d{3})+\\b.*")) {
            return Typed.refused(
                    quoted + ", with gaps between digits",
                    "a separator between thousands",
                    "write the digits without gaps");
        }
        if (t.matches("\\d+\\s*/\\s*\\d+.*")) {
            return Typed.refused(quoted, "a fraction", "write it as a decimal number");
        }
        if (t.matches("\\d+[:;]\\d+.*")) {
            return Typed.refused(quoted, "years and months, or a time", "write a decimal number, such as 9.4");
        }
        if (t.matches("(?i)[+-]?\\.?(nan|inf(inity)?)\\b.*")) {
            return Typed.refused(
                    quoted, "the result of a failed calculation", "write the number that was measured, or unknown");
        }
        if (t.matches("(?i)\\?+|-+|n/?a|none|nil|tbd")) {
            return Typed.refused(quoted, "a value that is not known", "write unknown, or leave the field out");
        }
        if (unit.dimension() == Unit.Dimension.LENGTH && t.matches("0[12]\\d")) {
            return Typed.refused(
                    quoted, "a wire size in thousandths of an inch, as it is said", "write 0." + t + " in");
        }
        if (t.matches("(?i).*\\d\\s*(left|right|l|r)")) {
            return Typed.refused(
                    quoted, "a side behind the number", "write the number alone, in the field of that side");
        }
        if (t.matches("[+-]?0\\d.*|(?i)0[xob].*")) {
            return Typed.refused(
                    quoted,
                    "a number in octal or hexadecimal form, or leading zeros",
                    "write it without zeros in front");
        }
        if (t.matches("(?i)[+-]?[\\d.]+e[+-]?\\d+.*")) {
            return Typed.refused(quoted, "a number with an exponent", "write it out in full");
        }
        if (t.matches("[<>~≈±≤≥].*|.*\\d\\s*(-|–|\\.\\.|to|bis)\\s*\\d.*")) {
            return Typed.refused(quoted, "an estimate or a span", "write one value, or several readings as a list");
        }
        return Typed.refused(quoted, "", "write a number, with or without its unit");
    }
}
