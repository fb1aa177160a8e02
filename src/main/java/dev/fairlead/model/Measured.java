package dev.fairlead.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A quantity: known (value, unit, error and where the error comes from), unknown, or not applicable.
 *
 * <p>The error is kept as first-order contributions by source, {@code (dv/dx) * sd(x)} for each independent source x,
 * so that values made of the same measurements keep their correlation (GUM, JCGM 100:2008, 5.1.2 and 5.2.2). The
 * predicates are false whenever the value is not known: a missing fact can make neither a pass nor a warning.
 */
public final class Measured implements CaseValue {
    /** Two values closer than this are one value: it swallows binary rounding, and is far below any measurement. */
    public static final double ROUNDING = 1e-9;

    /** Far finer than an error is known, far coarser than a rounding. */
    private static final MathContext RECORDED = new MathContext(12);

    private static final String[] NO_SOURCES = {};
    private static final double[] NO_PARTS = {};
    private static final Measured NOT_APPLICABLE =
            new Measured(Double.NaN, Unit.COUNT, NO_SOURCES, NO_PARTS, NO_PARTS, List.of(), false);

    private final double value;
    private final Unit unit;
    private final String[] sources;
    private final double[] parts;
    private final double[] repeats;
    private final List<String> missing;
    private final boolean applies;
    private final boolean known;

    private Measured(
            double value,
            Unit unit,
            String[] sources,
            double[] parts,
            double[] repeats,
            List<String> missing,
            boolean applies) {
        this.value = value;
        this.unit = unit;
        this.sources = sources;
        this.parts = parts;
        this.repeats = repeats;
        this.missing = missing;
        this.applies = applies;
        this.known = applies && missing.isEmpty();
    }

    /** An exact value, such as a count or a nominal size. */
    public static Measured exact(double value, Unit unit) {
        return new Measured(finite(value), unit, NO_SOURCES, NO_PARTS, NO_PARTS, List.of(), true);
    }

    /** A measured value with one error source; {@code sd} is one standard deviation in {@code unit}. */
    public static Measured of(double value, Unit unit, String source, double sd) {
        return of(value, unit, source, sd, NO_PARTS);
    }

    /** The mean of repeated readings with one error source; the readings are kept for duplicate error. */
    public static Measured of(double value, Unit unit, String source, double sd, double[] repeats) {
        if (!(sd >= 0) || Double.isInfinite(sd)) {
            throw new IllegalArgumentException("an error is a finite number of zero or more");
        }
        boolean exact = sd == 0;
        return new Measured(
                finite(value),
                unit,
                exact ? NO_SOURCES : new String[] {source},
                exact ? NO_PARTS : new double[] {sd},
                repeats.clone(),
                List.of(),
                true);
    }

    /** An unknown quantity; {@code pointer} says where in the case it would stand. */
    public static Measured unknown(String pointer) {
        return unknown(List.of(pointer));
    }

    /** An unknown derived quantity; {@code pointers} are the facts that would make it known. */
    public static Measured unknown(List<String> pointers) {
        return new Measured(Double.NaN, Unit.COUNT, NO_SOURCES, NO_PARTS, NO_PARTS, List.copyOf(pointers), true);
    }

    public static Measured notApplicable() {
        return NOT_APPLICABLE;
    }

    static Measured derived(double value, Unit unit, String[] sources, double[] parts) {
        return new Measured(finite(value), unit, sources, parts, NO_PARTS, List.of(), true);
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a known value must be a finite number, not " + value);
        }
        return value;
    }

    @Override
    public boolean known() {
        return known;
    }

    @Override
    public boolean applies() {
        return applies;
    }

    @Override
    public List<String> missing() {
        return missing;
    }

    /** The value in {@link #unit()}; throws when it is not known, so that no absent value enters a sum. */
    public double value() {
        if (!known()) {
            throw new IllegalStateException("not known: " + missing);
        }
        return value;
    }

    public Unit unit() {
        return unit;
    }

    /** One standard deviation, in {@link #unit()}; zero for exact values. */
    public double sd() {
        double sum = 0;
        for (double p : parts) {
            sum += p * p;
        }
        return Math.sqrt(sum);
    }

    /** Signed contribution of one error source, in {@link #unit()}; zero if the source plays no part. */
    public double part(String source) {
        int i = Arrays.binarySearch(sources, source);
        return i < 0 ? 0 : parts[i];
    }

    /** The independent error sources, sorted. */
    public List<String> sources() {
        return List.of(sources);
    }

    /** The single readings that the value is the mean of; empty when there was one reading only. */
    public double[] repeats() {
        return repeats.clone();
    }

    public int repeatCount() {
        return repeats.length;
    }

    // ---- predicates, all false when the value is not known ----

    /** Known and within an upper limit, which passes itself when it is inclusive. */
    public boolean atMost(Limit limit) {
        return known() && (limit.inclusive() ? value <= limit.value() + ROUNDING : value < limit.value() - ROUNDING);
    }

    /** Known and beyond an upper limit: the exact opposite of {@link #atMost(Limit)} for a known value. */
    public boolean above(Limit limit) {
        return known() && !atMost(limit);
    }

    /** Known and within a lower limit, which passes itself when it is inclusive. */
    public boolean atLeast(Limit limit) {
        return known() && (limit.inclusive() ? value >= limit.value() - ROUNDING : value > limit.value() + ROUNDING);
    }

    /** Known and beyond a lower limit: the exact opposite of {@link #atLeast(Limit)} for a known value. */
    public boolean below(Limit limit) {
        return known() && !atLeast(limit);
    }

    // ---- arithmetic: unknown parts make an unknown result that names every missing fact ----

    public Measured plus(Measured other) {
        return combine(1, other, 1);
    }

    public Measured minus(Measured other) {
        return combine(1, other, -1);
    }

    public Measured plus(double constant) {
        return known() ? derived(value + constant, unit, sources, parts) : this;
    }

    public Measured times(double factor) {
        return chain(value * factor, factor, unit);
    }

    public Measured abs() {
        return known() ? chain(Math.abs(value), value < 0 ? -1 : 1, unit) : this;
    }

    /** The ratio of two quantities, times {@code factor} (100 for a percentage). */
    public Measured ratioTo(Measured other, double factor, Unit resultUnit) {
        Measured absent = absent(other);
        if (absent != null) {
            return absent;
        }
        double q = value / other.value * factor;
        return merge(q, resultUnit, factor / other.value, this, -q / other.value, other);
    }

    /** The larger of two quantities, unknown when either is. */
    public Measured max(Measured other) {
        Measured absent = absent(other);
        return absent != null ? absent : value >= other.value ? this : other;
    }

    /** The smaller of two quantities, unknown when either is. */
    public Measured min(Measured other) {
        Measured absent = absent(other);
        return absent != null ? absent : value <= other.value ? this : other;
    }

    /** A smooth function of this quantity: {@code newValue} with local slope {@code slope}. */
    public Measured chain(double newValue, double slope, Unit newUnit) {
        if (!known()) {
            return this;
        }
        double[] scaled = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            scaled[i] = parts[i] * slope;
        }
        return derived(newValue, newUnit, sources, scaled);
    }

    /**
     * The same value with one more independent error source, for example the standard error of a prediction equation.
     */
    public Measured withError(String source, double sd) {
        return known() ? plus(of(0, unit, source, sd)) : this;
    }

    /**
     * The same value and readings with a new error for its single source (used when a case's own duplicates replace a
     * default).
     */
    public Measured withOwnError(double sd) {
        if (!known() || sources.length != 1) {
            return this;
        }
        return new Measured(value, unit, sources, new double[] {sd}, repeats, missing, applies);
    }

    /**
     * The same value, readings and whole error, of which {@code part} comes from a source that other values share, such
     * as the scale of a picture; it is negative where the value falls as the source grows. A part that is not smaller
     * than the whole error says nothing new.
     */
    public Measured sharing(String source, double part) {
        double whole = known() ? rounded(sd()) : 0;
        if (part == 0 || !(Math.abs(part) < whole)) {
            return this;
        }
        double own = Math.sqrt(whole * whole - part * part) / whole;
        Measured recorded = parts.length == 1 ? of(value, unit, sources[0], whole) : this;
        Measured mixed = merge(value, unit, own, recorded, Math.signum(part), of(0, unit, source, Math.abs(part)));
        return new Measured(value, unit, mixed.sources, mixed.parts, repeats, missing, applies);
    }

    /**
     * The whole error as it was recorded, in {@link #unit()}: parts that {@link #sharing} told apart do not come
     * together again to the last bit.
     */
    public double recordedError() {
        return parts.length > 1 ? rounded(sd()) : sd();
    }

    /** True when {@code sd} was recorded as the whole error. */
    public boolean recordedWith(double sd) {
        return parts.length > 1 ? recordedError() == rounded(sd) : sd() == sd;
    }

    private static double rounded(double sd) {
        return new BigDecimal(sd).round(RECORDED).doubleValue();
    }

    /** The same measurement read differently: value and readings moved by {@code delta}, with the same error. */
    public Measured shifted(double delta) {
        if (!known()) {
            return this;
        }
        double[] moved = new double[repeats.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = repeats[i] + delta;
        }
        return new Measured(finite(value + delta), unit, sources, parts, moved, missing, applies);
    }

    /** The same as if it had no error; the single readings are kept. */
    public Measured withoutError() {
        return known() ? new Measured(value, unit, NO_SOURCES, NO_PARTS, repeats, missing, applies) : this;
    }

    /**
     * A function of several quantities; the slopes are taken by central differences over one standard deviation.
     * Unknown as soon as one argument is.
     */
    public static Measured function(Unit unit, ToDoubleFunction<double[]> f, Measured... args) {
        double[] x = new double[args.length];
        Measured absent = null;
        for (int i = 0; i < args.length; i++) {
            if (!args[i].known()) {
                absent = absent == null ? args[i] : absent.absent(args[i]);
            } else {
                x[i] = args[i].value;
            }
        }
        if (absent != null) {
            return absent;
        }
        Measured result = exact(f.applyAsDouble(x), unit);
        for (int i = 0; i < args.length; i++) {
            double sd = args[i].sd();
            if (sd > 0) {
                double at = x[i];
                // with an error as large as itself a length would be tried at nought and below, where it has no meaning
                double step = at > 0 && at <= sd ? at / 2 : sd;
                x[i] = at + step;
                double up = f.applyAsDouble(x);
                x[i] = at - step;
                double down = f.applyAsDouble(x);
                x[i] = at;
                result = merge(result.value, unit, 1, result, (up - down) / (2 * step), args[i]);
            }
        }
        return result;
    }

    /** The sum of all, unknown when one is. */
    public static Measured sum(List<Measured> all) {
        Measured sum = null;
        for (Measured m : all) {
            sum = sum == null ? m : sum.plus(m);
        }
        if (sum == null) {
            throw new IllegalArgumentException("nothing to sum");
        }
        return sum;
    }

    private Measured combine(double a, Measured other, double b) {
        Measured absent = absent(other);
        if (absent != null) {
            return absent;
        }
        if (unit != other.unit) {
            throw new IllegalArgumentException("cannot add " + unit + " and " + other.unit);
        }
        return merge(a * value + b * other.value, unit, a, this, b, other);
    }

    /** Null when both are known; else what stands for the result. Not applicable wins: no measuring would mend it. */
    private @Nullable Measured absent(Measured other) {
        if (known() && other.known()) {
            return null;
        }
        if (!applies || !other.applies) {
            return NOT_APPLICABLE;
        }
        List<String> all = Pointers.union(missing, other.missing);
        return all == missing ? this : all == other.missing ? other : unknown(all);
    }

    private static Measured merge(double value, Unit unit, double a, Measured x, double b, Measured y) {
        if (x.sources.length == 0 && y.sources.length == 0) {
            return exact(value, unit);
        }
        int n = x.sources.length + y.sources.length;
        String[] s = new String[n];
        double[] p = new double[n];
        int i = 0;
        int j = 0;
        int k = 0;
        while (i < x.sources.length || j < y.sources.length) {
            int c = i == x.sources.length ? 1 : j == y.sources.length ? -1 : x.sources[i].compareTo(y.sources[j]);
            s[k] = c <= 0 ? x.sources[i] : y.sources[j];
            p[k] = (c <= 0 ? a * x.parts[i] : 0) + (c >= 0 ? b * y.parts[j] : 0);
            i += c <= 0 ? 1 : 0;
            j += c >= 0 ? 1 : 0;
            k++;
        }
        return derived(value, unit, k == n ? s : Arrays.copyOf(s, k), k == n ? p : Arrays.copyOf(p, k));
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Measured m
                && Double.compare(value, m.value) == 0
                && unit == m.unit
                && Arrays.equals(sources, m.sources)
                && Arrays.equals(parts, m.parts)
                && Arrays.equals(repeats, m.repeats)
                && missing.equals(m.missing)
                && applies == m.applies;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(value) * 31 + missing.hashCode();
    }

    @Override
    public String toString() {
        return known() ? value + " " + unit.symbol() : applies ? "unknown" + missing : "does not apply";
    }
}
