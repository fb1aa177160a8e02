package dev.fairlead.intake;

import dev.fairlead.intake.bind.QuantityParts;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Cases made at random from what the records say of themselves: any mix of known, unknown and inapplicable facts within
 * their ranges.
 */
public final class RandomCases {
    private static final List<Tooth> TEETH =
            IntStream.range(11, 86).filter(Tooth::exists).mapToObj(Tooth::of).toList();
    private final Random random;
    private final double told;
    private LocalDate clock = LocalDate.of(2026, 1, 5);

    /** {@code told} is the share of facts that are known. */
    public RandomCases(long seed, double told) {
        random = new Random(seed);
        this.told = told;
    }

    public Case next() {
        clock = LocalDate.of(2026, 1, 5);
        Case c = (Case) record(RecordShape.ofCase(), "");
        // a stand-off for both sides beside one of a side is an error of the case
        return c.plan().sidedStandOff() ? Edit.forget(c, "/plan/standOff") : c;
    }

    private Record record(RecordShape shape, String pointer) {
        Object[] values = new Object[shape.fields().size()];
        for (FieldShape f : shape.fields()) {
            values[f.index()] = value(f, pointer + "/" + RecordShape.escape(f.key()));
        }
        return shape.make(values);
    }

    private Object value(FieldShape f, String pointer) {
        boolean known = random.nextDouble() < told;
        if (f.kind().fact()) {
            if (!known) {
                return RecordShape.blankOf(f, pointer);
            }
            if (f.about().mayNotApply() && random.nextInt(4) == 0) {
                return switch (f.kind()) {
                    case QUANTITY -> Measured.notApplicable();
                    case ANSWER -> Answer.NOT_APPLICABLE;
                    default -> Fact.notApplicable();
                };
            }
        }
        return switch (f.kind()) {
            case QUANTITY -> quantity(f.about(), pointer);
            case ANSWER -> Answer.of(random.nextBoolean());
            case CHOICE -> Fact.of(f.choices().get(random.nextInt(f.choices().size())));
            case DATE -> Fact.of(pointer.equals("/date") ? LocalDate.of(2031, 1, 1) : later());
            case TEXT -> Fact.of(text(f));
            case TOOTH -> Fact.of(TEETH.get(random.nextInt(TEETH.size())));
            case FORMAT -> 1;
            case ID -> "demo-" + random.nextInt(1000);
            case RECORD -> record(f.nested(), pointer);
            case LIST -> list(f, pointer);
            case TOOTH_MAP -> teeth(f, pointer);
        };
    }

    private String text(FieldShape f) {
        return switch (f.key()) {
            case "field" -> "/bite/overjet";
            case "time" -> String.format("%02d:%02d", random.nextInt(24), random.nextInt(60));
            case "initials", "by" -> "ab";
            case "criterion" -> "stand-off";
            case "resident", "site" -> "r" + random.nextInt(100);
            default -> "agreed after \"looking\" again, näher: " + random.nextInt(1000) + " # no comment";
        };
    }

    private Measured quantity(Field about, String pointer) {
        if (about.unit() == Unit.COUNT) {
            return Measured.exact(
                    Math.rint(about.low()) + random.nextInt((int) (about.high() - about.low()) + 1), Unit.COUNT);
        }
        double sd = about.error().defaultSd();
        int n = random.nextInt(3) == 0 ? 1 + random.nextInt(4) : 0;
        double[] repeats = new double[n];
        double first = within(about, about.low() + random.nextDouble() * (about.high() - about.low()));
        for (int i = 0; i < n; i++) {
            repeats[i] = within(about, first + random.nextDouble() * 4 * sd);
        }
        double v = n == 0 ? first : QuantityParts.mean(repeats);
        double stated = random.nextInt(4) == 0 ? random.nextInt(3) * 0.05 : sd / Math.sqrt(Math.max(1, n));
        return stated == 0 && n == 0
                ? Measured.exact(v, about.unit())
                : Measured.of(v, about.unit(), pointer, stated, repeats);
    }

    /** Two to fifteen digits, away from what looks like a share or a value in newtons. */
    private double within(Field about, double v) {
        double clipped = Math.min(about.high(), Math.max(about.low(), v));
        double rounded = new BigDecimal(clipped)
                        .setScale(random.nextInt(4), RoundingMode.HALF_EVEN)
                        .doubleValue()
                + 0.0;
        double kept = rounded < about.low() || rounded > about.high() ? clipped : rounded;
        return (about.unit() == Unit.PERCENT || about.unit() == Unit.GF) && kept > 0 && kept < 10 ? 10 : kept;
    }

    private List<Object> list(FieldShape f, String pointer) {
        List<Object> all = new ArrayList<>();
        int n = random.nextInt(4);
        for (int i = 0; i < n; i++) {
            all.add(record(f.nested(), pointer + "/" + i));
        }
        return all;
    }

    private Map<Tooth, Object> teeth(FieldShape f, String pointer) {
        Map<Tooth, Object> all = new HashMap<>();
        List<Tooth> from = f.key().equals("brackets")
                ? Tooth.LOWER_INCISORS
                : TEETH.stream().filter(t -> t.lower() || t.position() <= 3).toList();
        int n = random.nextInt(from.size());
        for (int i = 0; i < n; i++) {
            Tooth t = from.get(random.nextInt(from.size()));
            all.put(t, record(f.nested(), pointer + "/" + t));
        }
        return all;
    }

    private LocalDate later() {
        clock = clock.plusDays(1 + random.nextInt(20));
        return clock;
    }
}
