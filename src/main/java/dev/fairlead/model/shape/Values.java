package dev.fairlead.model.shape;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Turns a plain value (a number, a word, a date) into what a component of a case record holds. */
public final class Values {
    private static final ClassValue<Map<String, Choice>> CHOICES = new ClassValue<>() {
        @Override
        protected Map<String, Choice> computeValue(Class<?> type) {
            return Arrays.stream(type.getEnumConstants())
                    .map(Choice.class::cast)
                    .collect(Collectors.toMap(Choice::word, c -> c));
        }
    };

    private Values() {}

    /**
     * The error of a quantity that states none, in the field's unit: that of one reading, or of the mean of several
     * independent ones (standard deviation over the root of their number; GUM, JCGM 100:2008, 4.2.3).
     */
    public static double assumedError(Field about, double value, int readings) {
        return value == 0 && about.zeroIsNone() ? 0 : about.error().defaultSd() / Math.sqrt(Math.max(1, readings));
    }

    /**
     * A quantity as the field describes it: its unit and its assumed error. Of several readings the mean counts, and
     * they are kept.
     */
    public static Measured measured(FieldShape field, String pointer, double... readings) {
        if (readings.length == 0) {
            throw new IllegalArgumentException(pointer + " needs at least one reading");
        }
        if (readings.length == 1) {
            double sd = assumedError(field.about(), readings[0], 1);
            return sd == 0
                    ? Measured.exact(readings[0], field.about().unit())
                    : Measured.of(readings[0], field.about().unit(), pointer, sd);
        }
        double sum = 0;
        for (double r : readings) {
            sum += r;
        }
        // nine decimals take off the binary dust of summing: 5.4 and 5.5 give 5.45
        double mean = Math.rint(sum / readings.length * 1e9) / 1e9;
        return Measured.of(
                mean, field.about().unit(), pointer, assumedError(field.about(), mean, readings.length), readings);
    }

    /**
     * What the component at {@code pointer} holds when it is given {@code value}; throws when the value does not suit
     * it.
     */
    static Object of(FieldShape field, String pointer, @Nullable Object value) {
        @Nullable
        Object made = switch (field.kind()) {
            case QUANTITY -> quantity(field, pointer, value);
            case ANSWER -> value instanceof Boolean b ? Answer.of(b) : value instanceof Answer ? value : null;
            case CHOICE -> value instanceof Fact<?> f ? holds(field, f) : fact(choice(field, value));
            case DATE -> value instanceof String s ? Fact.of(LocalDate.parse(s)) : factOf(LocalDate.class, value);
            case TEXT -> factOf(String.class, value);
            case TOOTH -> value instanceof Integer i ? Fact.of(Tooth.of(i)) : factOf(Tooth.class, value);
            case FORMAT -> value instanceof Integer ? value : null;
            case ID -> value instanceof String ? value : null;
            case RECORD -> field.holds().isInstance(value) ? value : null;
            case LIST -> value instanceof List<?> l && l.stream().allMatch(field.holds()::isInstance) ? value : null;
            case TOOTH_MAP ->
                value instanceof Map<?, ?> m
                                && m.keySet().stream().allMatch(Tooth.class::isInstance)
                                && m.values().stream().allMatch(field.holds()::isInstance)
                        ? value
                        : null;
        };
        if (made == null) {
            throw new IllegalArgumentException(pointer + " cannot hold " + value + "; it is a " + field.kind());
        }
        return made;
    }

    private static @Nullable Object quantity(FieldShape field, String pointer, @Nullable Object value) {
        if (value instanceof Measured) {
            return value;
        }
        if (value instanceof Number n) {
            return measured(field, pointer, n.doubleValue());
        }
        if (value instanceof double[] readings) {
            return measured(field, pointer, readings);
        }
        if (value instanceof List<?> l && l.stream().allMatch(Number.class::isInstance)) {
            return measured(
                    field,
                    pointer,
                    l.stream().mapToDouble(n -> ((Number) n).doubleValue()).toArray());
        }
        return null;
    }

    private static @Nullable Choice choice(FieldShape field, @Nullable Object value) {
        return field.holds().isInstance(value)
                ? (Choice) value
                : value instanceof String word ? CHOICES.get(field.holds()).get(word) : null;
    }

    private static @Nullable Object holds(FieldShape field, Fact<?> fact) {
        return !fact.known() || field.holds().isInstance(fact.get()) ? fact : null;
    }

    private static @Nullable Object fact(@Nullable Object value) {
        return value == null ? null : Fact.of(value);
    }

    private static @Nullable Object factOf(Class<?> type, @Nullable Object value) {
        if (value instanceof Fact<?> f) {
            return !f.known() || type.isInstance(f.get()) ? f : null;
        }
        return value != null && type.isInstance(value) ? Fact.of(value) : null;
    }
}
