package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Facts in every combination of states that the rules of a criterion can tell apart: each component that they look at
 * unknown, not applicable, yes, no, and under, at and over each of its limits. With these the engine decides in the
 * build what it can ever decide.
 */
final class Combinations {
    /** A criterion with more is left to the engine. */
    private static final int MOST = 100_000;
    /**
     * How far from a limit a value stands, as a share of the limit or at least of 1: well over what counts as equal.
     */
    private static final double BESIDE = 1e-6;

    private final Limits limits;

    Combinations(Limits limits) {
        this.limits = limits;
    }

    /** The facts for a criterion with these conditions; empty when there are too many. */
    List<CaseFact> of(Criterion criterion, List<Term> conditions, List<PlainRule> rules) {
        Map<String, Set<Limit>> held = new LinkedHashMap<>();
        criterion.needs().forEach(n -> held.put(n.component(), new LinkedHashSet<>()));
        conditions.forEach(t -> held.computeIfAbsent(t.need().component(), c -> new LinkedHashSet<>()));
        conditions.stream()
                .filter(t -> t.kind().compares())
                .forEach(t -> held.get(t.need().component()).add(limits.of(t.limit())));
        rules.forEach(r -> r.seen()
                .forEach(s -> held.computeIfAbsent(s.component(), c -> new LinkedHashSet<>())
                        .add(limits.of(s.limit()))));
        RecordComponent[] components = criterion.about().getRecordComponents();
        List<List<?>> states = new ArrayList<>();
        long count = 1;
        for (RecordComponent c : components) {
            List<?> here = held.containsKey(c.getName())
                    ? states(c.getType(), held.get(c.getName()))
                    : List.of(some(c.getType()));
            states.add(here);
            count *= here.size();
            if (count > MOST) {
                return List.of();
            }
        }
        List<CaseFact> facts = new ArrayList<>();
        Constructor<? extends CaseFact> constructor = constructor(criterion.about(), components);
        for (int n = 0; n < count; n++) {
            Object[] values = new Object[components.length];
            int rest = n;
            for (int i = 0; i < values.length; i++) {
                values[i] = states.get(i).get(rest % states.get(i).size());
                rest /= states.get(i).size();
            }
            facts.add(made(constructor, values));
        }
        return facts;
    }

    private static List<CaseValue> states(Class<?> type, Set<Limit> held) {
        List<CaseValue> states = new ArrayList<>();
        if (type == Answer.class) {
            states.addAll(List.of(Answer.unknown("/"), Answer.NOT_APPLICABLE, Answer.YES, Answer.NO));
        } else if (type == Measured.class) {
            states.addAll(List.of(Measured.unknown("/"), Measured.notApplicable()));
            TreeMap<Double, Unit> values = new TreeMap<>();
            for (Limit l : held) {
                double step = BESIDE * Math.max(1, Math.abs(l.value()));
                List.of(l.value() - step, l.value(), l.value() + step).forEach(v -> values.put(v, l.unit()));
            }
            values.forEach((value, unit) -> states.add(Measured.exact(value, unit)));
            if (values.isEmpty()) {
                states.add(Measured.exact(1, Unit.MM));
            }
        } else {
            throw new IllegalStateException("rules look at a " + type + ", whose states are not told here");
        }
        return states;
    }

    /** A value of a component that no rule of the criterion looks at. */
    private static Object some(Class<?> type) {
        Map<Class<?>, Object> some = Map.of(
                Place.class,
                Place.CASE,
                Measured.class,
                Measured.notApplicable(),
                Answer.class,
                Answer.NOT_APPLICABLE,
                Side.class,
                Side.RIGHT,
                Tooth.class,
                Tooth.of(41),
                String.class,
                "",
                int.class,
                1);
        Object value = some.get(type);
        if (value == null) {
            throw new IllegalStateException("no value is told here for a " + type);
        }
        return value;
    }

    private static Constructor<? extends CaseFact> constructor(
            Class<? extends CaseFact> type, RecordComponent[] components) {
        try {
            return type.getConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    private static CaseFact made(Constructor<? extends CaseFact> constructor, Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(
                    "cannot make a " + constructor.getDeclaringClass().getSimpleName(), e);
        }
    }
}
