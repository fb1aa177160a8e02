package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Values;
import java.io.IOException;
import java.util.Arrays;

/**
 * Reads a quantity in any of its forms: a number, a text with a unit, a list of repeated readings, an object with a
 * stated error.
 */
final class QuantityReader {
    private static final double[] NONE = {};

    private final Input in;
    private final FactReader facts;
    private final QuantityParts parts;
    private final double[] readings = new double[QuantityParts.MOST_REPEATS];

    QuantityReader(Input in, FactReader facts) {
        this.in = in;
        this.facts = facts;
        parts = new QuantityParts(in);
    }

    /** Reads the current value; {@code blank} stands for unknown, and for what is refused. */
    Object read(FieldShape f, String pointer, Object blank) throws IOException {
        Field about = f.about();
        switch (in.parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                return single(number(about, pointer), about, pointer, blank);
            }
            case VALUE_STRING -> {
                String text = in.parser.getText();
                if (text.equals(CaseWords.UNKNOWN)) {
                    return blank;
                }
                if (text.equals(CaseWords.DOES_NOT_APPLY)) {
                    return facts.mayNotApply(about, pointer) ? Measured.notApplicable() : blank;
                }
                return single(parts.scalar(new Scalar(text, false, null), about, pointer, null), about, pointer, blank);
            }
            case START_ARRAY -> {
                double[] repeats = in.problems.kept()
                        ? parts.repeats(parts.list(about, pointer), about, pointer, null)
                        : clean(about, pointer);
                return repeats == null ? blank : made(QuantityParts.mean(repeats), repeats, Double.NaN, about, pointer);
            }
            case START_OBJECT -> {
                QuantityObject o = QuantityObject.read(in, parts, about, pointer);
                if (o == null) {
                    return blank;
                }
                return o.repeats() == null
                        ? made(o.value(), NONE, o.error(), about, pointer)
                        : made(QuantityParts.mean(o.repeats()), o.repeats(), o.error(), about, pointer);
            }
            default -> {
                in.wrong(pointer, QuantityParts.expected(about));
                return blank;
            }
        }
    }

    /** The quick way for a plain JSON number; YAML numbers have spellings that must be seen first. */
    private double number(Field about, String pointer) throws IOException {
        if (in.format == CaseFormat.JSON) {
            double v = Decimals.read(in.parser) + 0.0;
            if (v >= about.low() && v <= about.high() && !parts.odd(v, about)) {
                return v;
            }
        }
        return parts.scalar(new Scalar(in.parser.getText(), true, null), about, pointer, null);
    }

    /**
     * A list of readings without a problem; the first one ends this reading, and the next tells all of a list together.
     */
    private double[] clean(Field about, String pointer) throws IOException {
        int n = 0;
        for (JsonToken t = in.parser.nextToken(); t != JsonToken.END_ARRAY; t = in.parser.nextToken()) {
            if (n == readings.length || t == null || !t.isNumeric()) {
                throw Problems.met();
            }
            readings[n++] = number(about, pointer);
        }
        if (n == 0 || about.unit() == Unit.COUNT) {
            throw Problems.met();
        }
        double[] all = Arrays.copyOf(readings, n);
        parts.apart(all, about, pointer);
        return all;
    }

    private Object single(double v, Field about, String pointer, Object blank) {
        return Double.isNaN(v) ? blank : made(v, NONE, Double.NaN, about, pointer);
    }

    private Measured made(double v, double[] repeats, double statedError, Field about, String pointer) {
        double sd = !in.errors
                ? 0
                : Double.isNaN(statedError) ? Values.assumedError(about, v, repeats.length) : statedError;
        return sd == 0 && repeats.length == 0
                ? Measured.exact(v, about.unit())
                : Measured.of(v, about.unit(), pointer, sd, repeats);
    }
}
