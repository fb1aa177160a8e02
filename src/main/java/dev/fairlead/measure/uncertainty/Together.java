package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
            List<Span> joined = new ArrayList<>();
            for (Iterator<List<Span>> i = groups.iterator(); i.hasNext(); ) {
                List<Span> group = i.next();
                if (shares(s, group)) {
                    joined.addAll(group);
                    i.remove();
                }
            }
            joined.add(s);
            groups.add(joined);
        }
        List<Together> together = new ArrayList<>();
        for (List<Span> group : groups) {
            together.add(new Together(group));
        }
        return together;
    }

    private static boolean shares(Span one, List<Span> group) {
        for (Span s : group) {
            if (one.shares(s)) {
                return true;
            }
        }
        return false;
    }

    /** The measurements in these values, each once. */
    Set<String> sources() {
        Set<String> sources = new LinkedHashSet<>();
        for (Span s : spans) {
            sources.addAll(s.sources());
        }
        return sources;
    }

    /** Probability that all stay on their side. */
    double same() {
        return same;
    }

    /** The probability once the error of a measurement is divided by sqrt 2. */
    double sameWhenRepeated(String source) {
        List<Span> repeated = new ArrayList<>();
        for (Span s : spans) {
            repeated.add(s.repeated(source));
        }
        return chained(repeated);
    }

    /**
     * The probability of the least certain one, times that of each other one given the one before it with which it goes
     * most closely together (a tree of dependence, Chow &amp; Liu 1968).
     */
    private static double chained(List<Span> spans) {
        List<Span> left = new ArrayList<>(spans);
        Span first = left.get(0);
        for (Span s : left) {
            first = s.stays() < first.stays() ? s : first;
        }
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
