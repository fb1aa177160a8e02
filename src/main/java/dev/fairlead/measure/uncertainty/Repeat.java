package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
    /** Steps in which drops are told apart. */
    private static final double ALIKE = 1e-9;

    public Repeat {
        criteria = List.copyOf(criteria);
    }

    private record Gain(String criterion, double drop) implements Comparable<Gain> {
        /** The most first. */
        @Override
        public int compareTo(Gain other) {
            return mostFirst(drop, other.drop);
        }
    }

    /** All measurements that would make an outcome surer, the one to repeat first in front; ties by pointer. */
    public static List<Repeat> ranking(Flips flips) {
        Map<String, List<Gain>> gains = new TreeMap<>();
        for (String criterion : flips.criteria()) {
            for (Map.Entry<String, Double> e : flips.drops(criterion).entrySet()) {
                if (e.getValue() > LEAST) {
                    Flips.add(gains, e.getKey(), new Gain(criterion, e.getValue()));
                }
            }
        }
        List<Repeat> ranking = new ArrayList<>();
        for (Map.Entry<String, List<Gain>> e : gains.entrySet()) {
            ranking.add(of(e.getKey(), e.getValue()));
        }
        ranking.sort((a, b) -> mostFirst(a.drop, b.drop));
        return List.copyOf(ranking);
    }

    /** Drops that differ by rounding alone are ties. */
    private static int mostFirst(double one, double other) {
        return Double.compare(Math.rint(other / ALIKE), Math.rint(one / ALIKE));
    }

    private static Repeat of(String pointer, List<Gain> gains) {
        Collections.sort(gains);
        double drop = 0;
        List<String> criteria = new ArrayList<>();
        for (Gain g : gains) {
            drop += g.drop();
            criteria.add(g.criterion());
        }
        return new Repeat(pointer, drop, criteria);
    }
}
