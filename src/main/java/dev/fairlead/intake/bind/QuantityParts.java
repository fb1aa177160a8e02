package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.spelling.PlainNumber;
import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.spelling.Quantities;
import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.intake.spelling.UnitWords;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Field;
import dev.fairlead.model.Unit;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Judges single readings and lists of them: form, unit, range, and whether readings of one thing agree. */
public final class QuantityParts {
    /** The most readings of one quantity. */
    public static final int MOST_REPEATS = 20;

    /** Readings further apart than so many errors of one reading are hardly readings of one thing. */
    private static final double APART = 8;

    private final Input in;

    public QuantityParts(Input in) {
        this.in = in;
    }

    /**
     * True for a number as cases may write it; a JSON parser lets no other spellings through but NaN and the
     * infinities.
     */
    public boolean readable(String number) {
        return in.format == CaseFormat.JSON
                ? Character.isDigit(number.charAt(number.length() - 1))
                : PlainNumber.is(number);
    }

    public static String expected(Field about) {
        return (about.unit() == Unit.COUNT ? "a whole number from " : "a number from ") + Slips.range(about);
    }

    /** True for a value within the range that needs a second look. */
    public boolean odd(double v, Field about) {
        return about.unit() == Unit.COUNT && v != Math.rint(v)
                || v < 10 && v > 0 && (about.unit() == Unit.PERCENT || about.unit() == Unit.GF);
    }

    /** One reading in the field's unit, or NaN when it was refused; {@code unit} is the unit stated apart, or null. */
    public double scalar(Scalar s, Field about, String pointer, UnitWords.@Nullable Word unit) throws IOException {
        in.pinned = s.at();
        try {
            return s.numeric() ? number(s, about, pointer, unit) : typed(s, about, pointer, unit);
        } finally {
            in.pinned = null;
        }
    }

    private double number(Scalar s, Field about, String pointer, UnitWords.@Nullable Word unit) throws IOException {
        if (!readable(s.text())) {
            Quantities.Typed why = Quantities.read(s.text(), about);
            return refuse(
                    pointer,
                    about,
                    s.found(),
                    why.slip(),
                    why.mend().isEmpty() ? "write a plain decimal number" : why.mend());
        }
        BigDecimal exact = PlainNumber.read(s.text());
        if (exact == null) {
            return refuse(
                    pointer,
                    about,
                    s.found(),
                    "the result of a failed calculation",
                    "write the number that was measured, or unknown");
        }
        double converted = (unit == null ? exact : UnitWords.fitting(exact, unit, about.unit())).doubleValue();
        return checked(converted + 0.0, unit != null, s, about, pointer);
    }

    private double typed(Scalar s, Field about, String pointer, UnitWords.@Nullable Word unit) throws IOException {
        if (s.text().equals(CaseWords.UNKNOWN) || s.text().equals(CaseWords.DOES_NOT_APPLY)) {
            return refuse(
                    pointer,
                    about,
                    s.found(),
                    "",
                    "a list or object holds readings only; write " + s.text() + " in its place");
        }
        Quantities.Typed t = Quantities.read(s.text(), about);
        if (!t.ok()) {
            Privacy.Refusal personal = Privacy.text(s.text());
            return personal != null
                    ? refuse(pointer, about, personal.found(), "", personal.mend())
                    : refuse(pointer, about, t.complaint(), t.slip(), t.mend());
        }
        if (unit == null) {
            return checked(t.value(), t.unitStated(), s, about, pointer);
        }
        if (t.unitStated()) {
            return refuse(pointer, about, s.found(), "", "the unit is given apart: leave one of the two out");
        }
        return checked(
                UnitWords.fitting(BigDecimal.valueOf(t.value()), unit, about.unit())
                        .doubleValue(),
                true,
                s,
                about,
                pointer);
    }

    private double refuse(String pointer, Field about, String found, String slip, String mend) {
        in.error(pointer, expected(about), found, slip, mend);
        return Double.NaN;
    }

    private double checked(double v, boolean unitStated, Scalar s, Field about, String pointer) {
        if (v < about.low() || v > about.high()) {
            String slip = Slips.outOfRange(v, about, unitStated).orElse("");
            boolean read = !s.numeric() && !s.text().strip().equals(Slips.number(v));
            return refuse(
                    pointer,
                    about,
                    s.found()
                            + (read
                                    ? ", which is " + Slips.number(v) + " "
                                            + about.unit().symbol()
                                    : ""),
                    slip,
                    slip.isEmpty() ? "measure or copy it again" : "write the value with its unit");
        }
        if (about.unit() == Unit.COUNT && v != Math.rint(v)) {
            return refuse(pointer, about, s.found(), "", "count again");
        }
        if (!unitStated && odd(v, about)) {
            Slips.inRange(v, about)
                    .ifPresent(slip -> in.doubt(
                            pointer,
                            expected(about),
                            s.found(),
                            slip,
                            "if it is meant so, write the unit with it, such as \"" + Slips.number(v) + " "
                                    + about.unit().symbol() + "\""));
        }
        return v;
    }

    /** The list at the current token, read over; null when it holds something that is no reading. */
    public @Nullable List<Scalar> list(Field about, String pointer) throws IOException {
        List<Scalar> all = new ArrayList<>();
        boolean ok = true;
        int n = 0;
        for (JsonToken t = in.parser.nextToken(); t != null && t != JsonToken.END_ARRAY; t = in.parser.nextToken()) {
            Scalar s = Scalar.of(in);
            if (s == null) {
                in.wrong(pointer + '/' + n, expected(about));
                ok = false;
            } else if (n < MOST_REPEATS) {
                all.add(s);
            } else if (n == MOST_REPEATS) {
                in.error(
                        pointer + '/' + n,
                        "at most " + MOST_REPEATS + " readings",
                        "more",
                        "",
                        "give the single readings of one measurement only");
                ok = false;
            }
            n++;
        }
        if (n == 0) {
            in.error(pointer, expected(about), "an empty list", "", "write unknown, or leave the field out");
        } else if (about.unit() == Unit.COUNT) {
            in.error(pointer, expected(about), "a list", "", "a count is not measured several times");
        } else if (ok) {
            return all;
        }
        return null;
    }

    /** The readings of a list in the field's unit, or null when one was refused. */
    public double @Nullable [] repeats(
            @Nullable List<Scalar> list, Field about, String pointer, UnitWords.@Nullable Word unit)
            throws IOException {
        if (list == null) {
            return null;
        }
        double[] readings = new double[list.size()];
        boolean ok = true;
        for (int i = 0; i < readings.length; i++) {
            readings[i] = scalar(list.get(i), about, pointer + '/' + i, unit);
            ok &= !Double.isNaN(readings[i]);
        }
        if (!ok) {
            return null;
        }
        in.pinned = list.get(0).at();
        spread(list, readings, about, pointer);
        in.pinned = null;
        return readings;
    }

    private void spread(List<Scalar> list, double[] readings, Field about, String pointer) {
        if (in.format == CaseFormat.YAML
                && list.size() == 2
                && list.get(1).offset()
                        == list.get(0).offset() + list.get(0).text().length() + 1
                && list.stream().allMatch(s -> s.numeric() && s.text().matches("[0-9]+"))) {
            String a = list.get(0).text();
            String b = list.get(1).text();
            in.doubt(
                    pointer,
                    "readings of one thing",
                    "[" + a + "," + b + "]",
                    "a decimal comma within brackets",
                    "write " + a + "." + b + " if one reading was meant, else [" + a + ", " + b + "] with a gap");
            return;
        }
        apart(readings, about, pointer);
    }

    /** Tells readings that lie too far apart. */
    public void apart(double[] readings, Field about, String pointer) {
        double most = APART * about.error().defaultSd();
        double least = readings[0];
        double greatest = readings[0];
        for (double r : readings) {
            least = Math.min(least, r);
            greatest = Math.max(greatest, r);
        }
        double span = greatest - least;
        if (most > 0 && span > most) {
            String symbol = " " + about.unit().symbol();
            in.doubt(
                    pointer,
                    "readings of one thing, within " + Slips.number(most) + symbol,
                    "readings " + Slips.number(span) + symbol + " apart",
                    "a slip in one reading, or readings of two different things",
                    "look at each reading again");
        }
    }

    /** The mean to nine decimals, which takes off the binary dust of summing: 5.4 and 5.5 give 5.45. */
    public static double mean(double[] readings) {
        double sum = 0;
        for (double r : readings) {
            sum += r;
        }
        return readings.length == 1 ? sum : Math.rint(sum / readings.length * 1e9) / 1e9 + 0.0;
    }
}
