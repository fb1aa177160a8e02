package dev.fairlead.rules.engine;

import dev.fairlead.model.Answer;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Remembers what came of the engine's answers, for those who judge many cases. The lint lets a condition see nothing of
 * a fact but the state of each component that its criterion needs, and on which side of each limit of that criterion it
 * lies: two facts that are alike in these, and in the units of their numbers, end alike. Safe to share between threads;
 * {@code -Dfairlead.memo=off} does without.
 *
 * @param <V> what is remembered
 */
public final class Memo<V> {
    private static final boolean OFF = "off".equals(System.getProperty("fairlead.memo"));
    /** Beyond this many for one criterion nothing more is kept; few have more than a hundred. */
    private static final int MOST_KEPT = 20_000;

    private static final int UNITS = Unit.values().length;

    /** Of one criterion: what tells its facts apart, and what is remembered of them, at most so many. */
    private record Kept<V>(int[] needs, Limit[] limits, int most, Map<Long, V> byKey) {}

    private final List<Kept<V>> kept = new ArrayList<>();

    /**
     * For these criteria, by their place in the list, under these limits; remembers nothing where that is {@code off}.
     */
    public Memo(List<Criterion> criteria, Limits inForce, boolean off) {
        for (Criterion c : criteria) {
            List<Limit> known = c.limits().stream()
                    .filter(inForce.all()::containsKey)
                    .map(inForce::of)
                    .toList();
            // where a limit is not there the engine alone says what becomes of that
            boolean told = known.size() == c.limits().size() && size(c, known.size()) < Long.MAX_VALUE;
            kept.add(new Kept<>(
                    c.needs().stream().mapToInt(Need::at).toArray(),
                    known.toArray(Limit[]::new),
                    told && !off && !OFF ? MOST_KEPT : 0,
                    new ConcurrentHashMap<>()));
        }
    }

    /** How many facts a criterion could at most tell apart. */
    private static double size(Criterion c, int limits) {
        double size = 1;
        for (Need n : c.needs()) {
            size *= 2 + (n.type() == Measured.class ? UNITS * Math.pow(3, limits) : 2);
        }
        return size;
    }

    /** What is remembered of a fact with these components; null when nothing is. */
    public @Nullable V of(int criterion, CaseValue[] fact) {
        return kept.get(criterion).byKey().get(key(kept.get(criterion), fact));
    }

    /** Remembers what came of a fact with these components. */
    public void keep(int criterion, CaseValue[] fact, V value) {
        Kept<V> here = kept.get(criterion);
        if (here.byKey().size() < here.most()) {
            here.byKey().put(key(here, fact), value);
        }
    }

    /** How many are remembered. */
    public int size() {
        return kept.stream().mapToInt(k -> k.byKey().size()).sum();
    }

    private static long key(Kept<?> kept, CaseValue[] fact) {
        long key = 0;
        for (int at : kept.needs()) {
            CaseValue k = fact[at];
            long states = 2;
            long state = k instanceof Answer a && a.yes() ? 1 : 0;
            if (k instanceof Measured m) {
                // a value in another unit than its limit is an error, which the engine's way tells
                states = UNITS;
                state = m.unit().ordinal();
                for (Limit limit : kept.limits()) {
                    states *= 3;
                    state = 3 * state + (k.known() ? side(m.value(), limit.value()) : 0);
                }
            }
            key = key * (2 + states) + (k.known() ? 2 + state : k.applies() ? 1 : 0);
        }
        return key;
    }

    /** Under, at or over: a value that rounding alone keeps from the limit is at it, inclusive or not. */
    private static int side(double value, double limit) {
        return value < limit - Measured.ROUNDING ? 0 : value > limit + Measured.ROUNDING ? 2 : 1;
    }
}
