package dev.fairlead.rules.engine;

import dev.fairlead.model.Answer;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Remembers what came of the engine's answers on a criterion, for those who judge many cases. The lint lets a condition
 * see nothing of a fact but the state of each component that its criterion needs, and on which side of each limit of
 * that criterion it lies: two facts that are alike in these, and in the units of their numbers, end alike. Safe to
 * share between threads; {@code -Dfairlead.memo=off} does without.
 *
 * @param <V> what is remembered
 */
public final class Memo<V> {
    private static final boolean OFF = "off".equals(System.getProperty("fairlead.memo"));
    /** Beyond this many nothing more is kept; few criteria have more than a hundred. */
    private static final int MOST_KEPT = 20_000;

    private static final int UNITS = Unit.values().length;

    private final int[] needs;
    private final Limit[] limits;
    private final int most;
    private final Map<Long, V> byKey = new ConcurrentHashMap<>();

    /** For a criterion under these limits; remembers nothing where that is {@code off}. */
    public Memo(Criterion c, Limits inForce, boolean off) {
        needs = c.needs().stream().mapToInt(Need::at).toArray();
        limits = c.limits().stream()
                .filter(inForce.all()::containsKey)
                .map(inForce::of)
                .toArray(Limit[]::new);
        // where a limit is not there the engine alone says what becomes of that
        boolean told = limits.length == c.limits().size() && size(c, limits.length) < Long.MAX_VALUE;
        most = told && !off && !OFF ? MOST_KEPT : 0;
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
    public @Nullable V of(CaseValue[] fact) {
        return byKey.get(key(fact));
    }

    /** Remembers what came of a fact with these components. */
    public void keep(CaseValue[] fact, V value) {
        if (byKey.size() < most) {
            byKey.put(key(fact), value);
        }
    }

    /** How many are remembered. */
    public int size() {
        return byKey.size();
    }

    private long key(CaseValue[] fact) {
        long key = 0;
        for (int at : needs) {
            CaseValue k = fact[at];
            long states = 2;
            long state = k instanceof Answer a && a.yes() ? 1 : 0;
            if (k instanceof Measured m) {
                // a value in another unit than its limit is an error, which the engine's way tells
                states = UNITS;
                state = m.unit().ordinal();
                for (Limit limit : limits) {
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
