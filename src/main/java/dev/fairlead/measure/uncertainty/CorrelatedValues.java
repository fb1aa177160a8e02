package dev.fairlead.measure.uncertainty;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Values of one criterion that share measurements, and so tend to cross their limits together. */
final class CorrelatedValues {
    private final List<ValueMargin> spans;
    private final double same;

    private CorrelatedValues(List<ValueMargin> spans) {
        this.spans = List.copyOf(spans);
        this.same = chained(this.spans);
    }

    /** Values parted into groups between which no measurement is shared. */
    static List<CorrelatedValues> groups(List<ValueMargin> all) {
        List<List<ValueMargin>> groups = new ArrayList<>();
        for (ValueMargin s : all) {
            List<ValueMargin> joined = new ArrayList<>();
            for (Iterator<List<ValueMargin>> i = groups.iterator(); i.hasNext(); ) {
                List<ValueMargin> group = i.next();
                if (shares(s, group)) {
                    joined.addAll(group);
                    i.remove();
                }
            }
            joined.add(s);
            groups.add(joined);
        }
        List<CorrelatedValues> together = new ArrayList<>();
        for (List<ValueMargin> group : groups) {
            together.add(new CorrelatedValues(group));
        }
        return together;
    }

    private static boolean shares(ValueMargin one, List<ValueMargin> group) {
        for (ValueMargin s : group) {
            if (one.shares(s)) {
                return true;
            }
        }
        return false;
    }

    /** The measurements in these values, each once. */
    Set<String> sources() {
        Set<String> sources = new LinkedHashSet<>();
        for (ValueMargin s : spans) {
            sources.addAll(s.sources());
        }
        return sources;
    }

    List<ValueMargin> values() {
        return spans;
    }

    /** Probability that all stay on their side. */
    double same() {
        return same;
    }

    /** The probability once the error of a measurement is divided by sqrt 2. */
    double sameWhenRepeated(String source) {
        List<ValueMargin> repeated = new ArrayList<>();
        for (ValueMargin s : spans) {
            repeated.add(s.repeated(source));
        }
        return chained(repeated);
    }

    /**
     * The probability of the least certain one, times that of each other one given the one before it with which it goes
     * most closely together (a tree of dependence, Chow &amp; Liu 1968).
     */
    private static double chained(List<ValueMargin> spans) {
        List<ValueMargin> left = new ArrayList<>(spans);
        ValueMargin first = left.get(0);
        for (ValueMargin s : left) {
            first = s.stays() < first.stays() ? s : first;
        }
        left.remove(first);
        List<ValueMargin> taken = new ArrayList<>(List.of(first));
        double same = first.stays();
        while (!left.isEmpty()) {
            ValueMargin next = left.get(0);
            ValueMargin with = first;
            double most = -1;
            for (ValueMargin candidate : left) {
                for (ValueMargin t : taken) {
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
