package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Probability of another outcome by first-order propagation (GUM, JCGM 100:2008, 5.1.2): exact where values are linear in normal
 * errors and one value decides, or two that share measurements. More values than two that share measurements are chained along their
 * strongest correlations; values that would have to change together are left to simulation.
 */
public final class Flips {
    /** Values of each criterion; those of different groups share no measurement. */
    private final Map<String, List<Together>> byCriterion = new LinkedHashMap<>();

    /** From all comparisons of one case; those that decide nothing are passed over. */
    public Flips(List<Compared> all) {
        Map<List<String>, List<Compared>> values = new LinkedHashMap<>();
        for (Compared c : all) {
            if (c.decides()) {
                values.computeIfAbsent(List.of(c.criterion(), c.place(), c.component()), k -> new ArrayList<>(2)).add(c);
            }
        }
        Map<String, List<Span>> spans = new LinkedHashMap<>();
        values.forEach((key, limits) -> spans.computeIfAbsent(key.get(0), k -> new ArrayList<>()).add(Span.of(limits)));
        spans.forEach((criterion, list) -> byCriterion.put(criterion, Together.groups(list)));
    }

    /** Probability that a criterion would end differently; 0 for one that holds no uncertain value against a limit. */
    public double of(String criterion) {
        double same = 1;
        for (Together t : byCriterion.getOrDefault(criterion, List.of())) {
            same *= t.same();
        }
        return 1 - same;
    }

    /** Expected number of criteria that would end differently. */
    public double expected() {
        return byCriterion.keySet().stream().mapToDouble(this::of).sum();
    }

    /** Criteria with a chance of another outcome, in the order of the comparisons. */
    public List<String> criteria() {
        return List.copyOf(byCriterion.keySet());
    }

    /** By how much the probability falls when the error of one measurement is divided by sqrt 2, as the mean of two readings has it. */
    double drop(String criterion, String source) {
        double same = 1;
        double repeated = 1;
        for (Together t : byCriterion.get(criterion)) {
            same *= t.same();
            repeated *= t.rests(source) ? t.sameWhenRepeated(source) : t.same();
        }
        return repeated - same;
    }
}
