package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Probability of another outcome by first-order propagation (GUM, JCGM 100:2008, 5.1.2): exact where values are linear
 * in normal errors and one value decides, or two that share measurements. More values than two that share measurements
 * are chained along their strongest correlations; values that would have to change together are left to simulation.
 */
public final class Flips {
    /** Values of each criterion; those of different groups share no measurement. */
    private final Map<String, List<CorrelatedValues>> byCriterion = new LinkedHashMap<>();

    /** From all comparisons of one case; those that decide nothing are passed over. */
    public Flips(List<Compared> all) {
        Map<List<String>, List<Compared>> values = new LinkedHashMap<>();
        for (Compared c : all) {
            if (c.decides()) {
                add(values, List.of(c.criterion(), c.place(), c.component()), c);
            }
        }
        Map<String, List<ValueMargin>> spans = new LinkedHashMap<>();
        for (List<Compared> limits : values.values()) {
            add(spans, limits.get(0).criterion(), ValueMargin.of(limits));
        }
        for (Map.Entry<String, List<ValueMargin>> e : spans.entrySet()) {
            byCriterion.put(e.getKey(), CorrelatedValues.groups(e.getValue()));
        }
    }

    /** Adds to the list under that key, which is made when it is not there. */
    static <K, V> void add(Map<K, List<V>> lists, K key, V value) {
        List<V> list = lists.get(key);
        if (list == null) {
            list = new ArrayList<>(2);
            lists.put(key, list);
        }
        list.add(value);
    }

    /** Probability that a criterion would end differently; 0 for one that holds no uncertain value against a limit. */
    public double of(String criterion) {
        double same = 1;
        for (CorrelatedValues t : byCriterion.getOrDefault(criterion, List.of())) {
            same *= t.same();
        }
        return 1 - same;
    }

    /**
     * What first order says of draws of these measurements, by JSON Pointer: whether a criterion, by its place among
     * those given, ends differently when each is off by so many of its standard deviations.
     */
    public Simulation.FirstOrder over(List<String> criteria, List<String> measurements) {
        Map<String, Integer> places = new HashMap<>();
        for (String m : measurements) {
            places.put(m, places.size());
        }
        ValueMargin.Line[][] lines = new ValueMargin.Line[criteria.size()][];
        for (int i = 0; i < lines.length; i++) {
            List<ValueMargin.Line> of = new ArrayList<>();
            for (CorrelatedValues t : byCriterion.getOrDefault(criteria.get(i), List.of())) {
                for (ValueMargin v : t.values()) {
                    of.add(v.line(places));
                }
            }
            lines[i] = of.toArray(ValueMargin.Line[]::new);
        }
        return (criterion, deviations) -> {
            for (ValueMargin.Line line : lines[criterion]) {
                if (line.crossed(deviations)) {
                    return true;
                }
            }
            return false;
        };
    }

    /** Expected number of criteria that would end differently. */
    public double expected() {
        return byCriterion.keySet().stream().mapToDouble(this::of).sum();
    }

    /** Criteria with a chance of another outcome, in the order of the comparisons. */
    public List<String> criteria() {
        return List.copyOf(byCriterion.keySet());
    }

    /**
     * By how much the probability falls when the error of a measurement is divided by sqrt 2, as the mean of two
     * readings has it.
     */
    Map<String, Double> drops(String criterion) {
        Map<String, Double> drops = new LinkedHashMap<>();
        List<CorrelatedValues> groups = Objects.requireNonNull(byCriterion.get(criterion), criterion);
        for (CorrelatedValues t : groups) {
            for (String source : t.sources()) {
                double same = 1;
                double repeated = 1;
                for (CorrelatedValues other : groups) {
                    same *= other.same();
                    repeated *= other == t ? t.sameWhenRepeated(source) : other.same();
                }
                drops.put(source, repeated - same);
            }
        }
        return drops;
    }
}
