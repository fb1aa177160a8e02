package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Probability of another outcome by first-order propagation (GUM, JCGM 100:2008, 5.1.2): exact where values are linear in normal
 * errors and one value decides; several values of one criterion are taken as independent, and two that would have to change together
 * are left to simulation.
 */
public final class Flips {
    /** All limits that one value of one place is held against. */
    private record Group(double variance, double below, double above, Compared any) {
        /** {@code variance} may be another than the value's own. */
        double flip(double variance) {
            double sd = Math.sqrt(Math.max(0, variance));
            return (Double.isInfinite(below) ? 0 : NormalTail.beyond(below, sd)) + (Double.isInfinite(above) ? 0 : NormalTail.beyond(above, sd));
        }
    }

    private final Map<String, List<Group>> byCriterion = new LinkedHashMap<>();

    /** From all comparisons of one case; those that decide nothing are passed over. */
    public Flips(List<Compared> all) {
        Map<List<String>, List<Compared>> values = new LinkedHashMap<>();
        for (Compared c : all) {
            if (c.decides()) {
                values.computeIfAbsent(List.of(c.criterion(), c.place(), c.component()), k -> new ArrayList<>(2)).add(c);
            }
        }
        values.forEach((key, limits) -> byCriterion.computeIfAbsent(key.get(0), k -> new ArrayList<>()).add(group(limits)));
    }

    /** On each side only the nearest limit counts: whoever passes the next has passed it. */
    private static Group group(List<Compared> limits) {
        double below = Double.POSITIVE_INFINITY;
        double above = Double.POSITIVE_INFINITY;
        for (Compared c : limits) {
            if (c.over()) {
                below = Math.min(below, c.distance());
            } else {
                above = Math.min(above, c.distance());
            }
        }
        return new Group(limits.get(0).measuredVariance(), below, above, limits.get(0));
    }

    /** Probability that a criterion would end differently; 0 for one that holds no uncertain value against a limit. */
    public double of(String criterion) {
        double same = 1;
        for (Group g : byCriterion.getOrDefault(criterion, List.of())) {
            same *= 1 - g.flip(g.variance());
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

    /** The same when the error of one measurement is divided by sqrt 2, as the mean of two readings has it. */
    double repeated(String criterion, String source) {
        double same = 1;
        for (Group g : byCriterion.get(criterion)) {
            double part = g.any().value().part(source);
            same *= 1 - g.flip(g.variance() - part * part / 2);
        }
        return 1 - same;
    }
}
