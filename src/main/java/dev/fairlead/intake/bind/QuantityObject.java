package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.intake.spelling.PlainNumber;
import dev.fairlead.intake.spelling.Quantities;
import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.intake.spelling.UnitWords;
import dev.fairlead.model.Field;
import dev.fairlead.model.Unit;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A quantity written in parts: {@code {value | repeats, unit?, error?}}.
 *
 * @param value in the field's unit; not used when there are repeats
 * @param repeats in the field's unit, or null
 * @param error one standard deviation in the field's unit; NaN when none is stated
 */
public record QuantityObject(double value, double @Nullable [] repeats, double error) {
    /** An error of more than this part of the field's whole range says nothing of the value. */
    private static final double WIDE_ERROR = 6;

    public static final List<String> KEYS = List.of("value", "repeats", "unit", "error");

    /** Reads the object at the current token; null when it was refused. */
    public static @Nullable QuantityObject read(Input in, QuantityParts parts, Field about, String pointer)
            throws IOException {
        Map<String, Scalar> given = new HashMap<>();
        @Nullable List<Scalar> list = null;
        boolean listed = false;
        boolean ok = true;
        while (in.parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = in.parser.currentName();
            String p = Keys.pointer(pointer, key);
            boolean twice = given.containsKey(key) || listed && key.equals("repeats");
            if (twice || !KEYS.contains(key)) {
                Keys.refuse(in, p, key, KEYS, twice);
                ok = false;
                continue;
            }
            JsonToken t = in.parser.nextToken();
            Scalar s = Scalar.of(in);
            if (key.equals("repeats") && t == JsonToken.START_ARRAY) {
                list = parts.list(about, p);
                listed = true;
                ok &= list != null;
            } else if (s == null
                    || key.equals("repeats")
                    || key.equals("error") && !s.numeric()
                    || key.equals("unit") && s.numeric()) {
                in.wrong(p, expected(key, about));
                ok = false;
            } else {
                given.put(key, s);
            }
        }
        if (!ok) {
            return null;
        }
        if (given.containsKey("value") == listed) {
            in.error(
                    pointer, "an object with value or repeats", listed ? "both" : "neither", "", "give one of the two");
            return null;
        }
        return judge(in, parts, about, pointer, given, list);
    }

    private static String expected(String key, Field about) {
        return switch (key) {
            case "repeats" -> "a list of readings";
            case "error" -> "one standard deviation: a number of zero or more";
            case "unit" -> "a unit: " + UnitWords.usual(about.unit());
            default -> QuantityParts.expected(about);
        };
    }

    private static @Nullable QuantityObject judge(
            Input in,
            QuantityParts parts,
            Field about,
            String pointer,
            Map<String, Scalar> given,
            @Nullable List<Scalar> list)
            throws IOException {
        UnitWords.@Nullable Word unit = null;
        Scalar s = given.get("unit");
        if (s != null) {
            unit = Quantities.unit(s.text());
            if (unit == null || UnitWords.convert(BigDecimal.ONE, unit, about.unit()) == null) {
                in.pinned = s.at();
                in.error(pointer + "/unit", expected("unit", about), s.found(), "", "");
                in.pinned = null;
                return null;
            }
        }
        double value = list == null
                ? parts.scalar(Objects.requireNonNull(given.get("value")), about, pointer + "/value", unit)
                : 0;
        double[] repeats = parts.repeats(list, about, pointer + "/repeats", unit);
        double error = given.containsKey("error")
                ? error(in, parts, about, pointer + "/error", given.get("error"), unit)
                : Double.NaN;
        boolean refused = Double.isNaN(value)
                || list != null && repeats == null
                || given.containsKey("error") && Double.isNaN(error);
        return refused ? null : new QuantityObject(value, repeats, error);
    }

    private static double error(
            Input in, QuantityParts parts, Field about, String pointer, Scalar s, UnitWords.@Nullable Word unit) {
        BigDecimal exact = parts.readable(s.text()) ? PlainNumber.read(s.text()) : null;
        double e = exact == null ? Double.NaN : exact.doubleValue();
        double widest = about.high() - about.low();
        if (unit != null && exact != null) {
            e = UnitWords.fitting(exact, unit, about.unit()).doubleValue();
        }
        boolean count = about.unit() == Unit.COUNT;
        if (e >= 0 && e <= (count ? 0 : widest)) {
            if (e > widest / WIDE_ERROR && e > 0) {
                in.pinned = s.at();
                in.doubt(
                        pointer,
                        "one standard deviation of a careful measurement",
                        s.found() + ", beside a range of " + Slips.range(about),
                        "a shifted decimal point, or the value written for its error",
                        "repeat the measurement and state how far the readings differ");
                in.pinned = null;
            }
            return e + 0.0;
        }
        in.pinned = s.at();
        in.error(
                pointer,
                count
                        ? "no error, since this is a count"
                        : "one standard deviation: a number from 0 to " + Slips.number(widest),
                s.found(),
                e < 0 ? "a lost or wrong sign" : "",
                "");
        in.pinned = null;
        return Double.NaN;
    }
}
