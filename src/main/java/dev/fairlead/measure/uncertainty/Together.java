package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Values of one criterion that share measurements, and so tend to cross their limits together. */
final class Together {
    private final List<Span> spans;
    private final double same;

    private Together(List<Span> spans) {
        this.spans = List.copyOf(spans);
        this.same = chained(this.spans);
    }

    /** Values parted into groups between which no measurement is shared. */
    static List<Together> groups(List<Span> all) {
        List<List<Span>> groups = new ArrayList<>();
        for (Span s : all) {
            List<List<Span>> joined = groups.stream().filter(g -> g.stream().anyMatch(s::shares)).toList();
            List<Span> group = new ArrayList<>(joined.stream().flatMap(List::stream).toList());
            group.add(s);
            groups.removeAll(joined);
            groups.add(group);
        }
        return groups.stream().map(Together::new).toList();
    }

    /** Probability that all stay on their side. */
    double same() {
        return same;
    }

    /** True when a measurement plays a part. */
    boolean rests(String source) {
        return spans.stream().anyMatch(s -> s.rests(source));
    }

    /** The probability once the error of a measurement is divided by sqrt 2. */
    double sameWhenRepeated(String source) {
        return chained(spans.stream().map(s -> s.repeated(source)).toList());
    }

    /**
     * The probability of the least certain one, times that of each other one given the one before it with which it goes most closely
     * together (a tree of dependence, Chow &amp; Liu 1968).
     */
    private static double chained(List<Span> spans) {
        List<Span> left = new ArrayList<>(spans);
        Span first = left.stream().min(Comparator.comparingDouble(Span::stays)).orElseThrow();
        left.remove(first);
        List<Span> taken = new ArrayList<>(List.of(first));
        double same = first.stays();
        while (!left.isEmpty()) {
            Span next = left.get(0);
            Span with = first;
            double most = -1;
            for (Span candidate : left) {
                for (Span t : taken) {
                    double r = Math.abs(candidate.correlation(t));
                    if (r > most) {
                        most = r;
                        next = candidate;
                        with = t;
                    }
                }
            }
            same *= next.staysGiven(with);
            left.remove(next);
            taken.add(next);
        }
        return same;
    }
}
