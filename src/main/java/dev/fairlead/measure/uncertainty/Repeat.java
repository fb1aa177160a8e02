package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What repeating one measurement would do.
 *
 * @param pointer JSON Pointer of the measurement
 * @param drop by how much the expected number of other outcomes falls when its error is divided by sqrt 2
 * @param criteria criteria that it makes surer, the most first
 */
public record Repeat(String pointer, double drop, List<String> criteria) {
    /** Drops smaller than this are no reason to measure again. */
    private static final double LEAST = 1e-6;

    public Repeat {
        criteria = List.copyOf(criteria);
    }

    private record Gain(String criterion, double drop) {}

    /** All measurements that would make an outcome surer, the one to repeat first in front; ties by pointer. */
    public static List<Repeat> ranking(List<Compared> all) {
        Flips flips = new Flips(all);
        Set<String> sources = new TreeSet<>();
        all.stream().filter(Compared::decides).forEach(c -> c.value().sources().stream().filter(Compared::measured).forEach(sources::add));
        List<Repeat> ranking = new ArrayList<>();
        for (String source : sources) {
            List<Gain> gains = new ArrayList<>();
            for (String criterion : flips.criteria()) {
                double drop = flips.drop(criterion, source);
                if (drop > LEAST) {
                    gains.add(new Gain(criterion, drop));
                }
            }
            if (!gains.isEmpty()) {
                gains.sort(Comparator.comparingDouble(Gain::drop).reversed());
                ranking.add(new Repeat(source, gains.stream().mapToDouble(Gain::drop).sum(), gains.stream().map(Gain::criterion).toList()));
            }
        }
        ranking.sort(Comparator.comparingDouble(Repeat::drop).reversed().thenComparing(Repeat::pointer));
        return List.copyOf(ranking);
    }
}
