package dev.fairlead.testing;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import dev.fairlead.model.shape.Values;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Any case that the records allow, however odd: facts known, unknown or stated not applicable, values anywhere in the
 * range of their field and often at its very ends, dates in any order. For properties that have to hold of every case;
 * nothing clinical is meant by it.
 */
public final class CaseGenerator {
    private static final List<Tooth> TEETH =
            IntStream.range(11, 86).filter(Tooth::exists).mapToObj(Tooth::of).toList();
    private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);

    private final Random random;
    private double known;
    private double extreme;

    public CaseGenerator(long seed) {
        random = new Random(seed);
    }

    /** The next case; how full it is and how extreme differs from case to case. */
    public Case next() {
        known = random.nextInt(5) / 4.0;
        extreme = random.nextInt(4) / 3.0;
        return (Case) record(RecordShape.ofCase(), "");
    }

    private Record record(RecordShape shape, String pointer) {
        Object[] values = new Object[shape.fields().size()];
        for (FieldShape f : shape.fields()) {
            values[f.index()] = value(f, pointer + "/" + RecordShape.escape(f.key()));
        }
        return shape.make(values);
    }

    private Object value(FieldShape f, String pointer) {
        if (f.kind().fact() && random.nextDouble() >= known) {
            return RecordShape.blankOf(f, pointer);
        }
        boolean applies = !f.about().mayNotApply() || random.nextInt(5) > 0;
        return switch (f.kind()) {
            case QUANTITY -> applies ? quantity(f, pointer) : Measured.notApplicable();
            case ANSWER -> applies ? Answer.of(random.nextBoolean()) : Answer.NOT_APPLICABLE;
            case CHOICE ->
                applies ? Fact.of(f.choices().get(random.nextInt(f.choices().size()))) : Fact.notApplicable();
            case DATE -> applies ? Fact.of(FIRST.plusDays(random.nextInt(1000))) : Fact.notApplicable();
            case TEXT -> applies ? Fact.of("word-" + random.nextInt(100)) : Fact.notApplicable();
            case TOOTH -> Fact.of(TEETH.get(random.nextInt(TEETH.size())));
            case FORMAT -> 1;
            case ID -> "any-" + random.nextInt(100_000);
            case RECORD -> record(f.nested(), pointer);
            case LIST -> list(f, pointer);
            case TOOTH_MAP -> teeth(f, pointer);
        };
    }

    private Measured quantity(FieldShape f, String pointer) {
        double[] readings = new double[random.nextInt(4) == 0 ? 2 : 1];
        for (int i = 0; i < readings.length; i++) {
            readings[i] = reading(f.about());
        }
        return Values.measured(f, pointer, readings);
    }

    private double reading(Field about) {
        if (random.nextDouble() < extreme) {
            return random.nextBoolean() ? about.low() : about.high();
        }
        double v = about.low() + random.nextDouble() * (about.high() - about.low());
        return about.unit() == Unit.COUNT ? Math.rint(v) : v;
    }

    private List<Object> list(FieldShape f, String pointer) {
        int n = random.nextDouble() < known ? random.nextInt(4) : 0;
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            all.add(record(f.nested(), pointer + "/" + i));
        }
        return all;
    }

    private Map<Tooth, Object> teeth(FieldShape f, String pointer) {
        List<Tooth> from = f.key().equals("brackets") ? Tooth.LOWER_INCISORS : TEETH;
        Map<Tooth, Object> all = new HashMap<>();
        for (Tooth t : from) {
            if (random.nextDouble() < known) {
                all.put(t, record(f.nested(), pointer + "/" + t));
            }
        }
        return all;
    }
}
