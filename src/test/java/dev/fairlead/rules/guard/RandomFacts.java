package dev.fairlead.rules.guard;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.model.Answer;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.verdict.Example;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Makes random facts of the base: values that examples use, values near them, answers, unknowns and what does not
 * apply.
 */
public final class RandomFacts {
    private static final double CHANGED = 0.25;

    private static final ClassValue<List<RecordComponent>> COMPONENTS = new ClassValue<>() {
        @Override
        @SuppressWarnings("unchecked")
        protected List<RecordComponent> computeValue(Class<?> type) {
            return components((Class<? extends CaseFact>) type);
        }
    };

    private final ExampleFacts base;
    private final Map<String, List<Measured>> pool = new HashMap<>();

    public RandomFacts(ExampleFacts base, List<Example> examples) {
        this.base = base;
        base.all().forEach(this::gather);
        examples.forEach(e -> base.with(e.set()).all().forEach(this::gather));
    }

    /** The components that can be known or unknown. */
    public static List<RecordComponent> components(Class<? extends CaseFact> type) {
        return Arrays.stream(type.getRecordComponents())
                .filter(c -> CaseValue.class.isAssignableFrom(c.getType()))
                .toList();
    }

    public List<CaseFact> facts(Random random) {
        List<CaseFact> facts = new ArrayList<>();
        for (CaseFact fact : base.all()) {
            Map<String, String> changed = new HashMap<>();
            for (RecordComponent c : COMPONENTS.get(fact.getClass())) {
                if (random.nextDouble() < CHANGED) {
                    changed.put(c.getName(), value(fact.getClass(), c, random));
                }
            }
            facts.add(changed.isEmpty() ? fact : ExampleFacts.with(fact, changed));
        }
        return facts;
    }

    private String value(Class<?> type, RecordComponent c, Random random) {
        int state = random.nextInt(10);
        if (state == 0) {
            return "unknown";
        }
        if (state == 1) {
            return "does-not-apply";
        }
        if (c.getType() == Answer.class) {
            return random.nextBoolean() ? "yes" : "no";
        }
        List<Measured> known = pool.get(type.getSimpleName() + "." + c.getName());
        Measured m = known.get(random.nextInt(known.size()));
        double value =
                random.nextBoolean() ? m.value() : m.value() + random.nextGaussian() * (0.1 + Math.abs(m.value()) / 4);
        return new java.math.BigDecimal(value)
                        .setScale(4, java.math.RoundingMode.HALF_UP)
                        .toPlainString() + " " + m.unit().symbol();
    }

    private void gather(CaseFact fact) {
        for (RecordComponent c : components(fact.getClass())) {
            List<Measured> known =
                    pool.computeIfAbsent(fact.getClass().getSimpleName() + "." + c.getName(), k -> new ArrayList<>());
            if (FactEdit.get(c, fact) instanceof Measured m && m.known() && !known.contains(m)) {
                known.add(m);
            }
        }
    }
}
