package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Probability of another outcome by first-order propagation (GUM, JCGM 100:2008, 5.1.2): exact where values are linear in normal
 * errors and one value decides, or two that share measurements. More values than two of one criterion are chained along their strongest
 * correlations; values that would have to change together are left to simulation.
 */
public final class Flips {
    private final Map<String, List<Span>> byCriterion = new LinkedHashMap<>();

    /** From all comparisons of one case; those that decide nothing are passed over. */
    public Flips(List<Compared> all) {
        Map<List<String>, List<Compared>> values = new LinkedHashMap<>();
        for (Compared c : all) {
            if (c.decides()) {
                values.computeIfAbsent(List.of(c.criterion(), c.place(), c.component()), k -> new ArrayList<>(2)).add(c);
            }
        }
        values.forEach((key, limits) -> byCriterion.computeIfAbsent(key.get(0), k -> new ArrayList<>()).add(Span.of(limits)));
    }

    /** Probability that a criterion would end differently; 0 for one that holds no uncertain value against a limit. */
    public double of(String criterion) {
        return 1 - same(byCriterion.getOrDefault(criterion, List.of()), "");
    }

    /** Expected number of criteria that would end differently. */
    public double expected() {
        return byCriterion.keySet().stream().mapToDouble(this::of).sum();
    }

    /** Criteria with a chance of another outcome, in the order of the comparisons. */
    public List<String> criteria() {
        return List.copyOf(byCriterion.keySet());
    }

    /** True when a measurement plays a part in how a criterion ends. */
    boolean rests(String criterion, String source) {
        return byCriterion.get(criterion).stream().anyMatch(s -> s.part(source, "") != 0);
    }

    /** The same when the error of one measurement is divided by sqrt 2, as the mean of two readings has it. */
    double repeated(String criterion, String source) {
        return 1 - same(byCriterion.get(criterion), source);
    }

    /**
     * Probability that all values stay on their side: that of the least certain one, times that of each other one given the one before
     * it with which it goes most closely together (a tree of dependence, Chow &amp; Liu 1968).
     */
    private static double same(List<Span> spans, String repeated) {
        List<Span> left = new ArrayList<>(spans);
        List<Span> taken = new ArrayList<>();
        double same = 1;
        while (!left.isEmpty()) {
            Span next = null;
            Span with = null;
            double most = -1;
            for (Span candidate : left) {
                for (Span t : taken) {
                    double r = Math.abs(candidate.correlation(t, repeated));
                    if (r > most) {
                        most = r;
                        next = candidate;
                        with = t;
                    }
                }
            }
            if (next == null) {
                next = left.stream().min(java.util.Comparator.comparingDouble(s -> s.stays(repeated))).orElseThrow();
            }
            same *= with == null || most == 0 ? next.stays(repeated) : next.staysGiven(with, repeated);
            left.remove(next);
            taken.add(next);
        }
        return same;
    }
}
