package dev.fairlead.audit.cohort;

import dev.fairlead.model.Case;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Invented cases for trying rules and audits on, each with the truth beside it.
 *
 * <p>One case in seven has gaps and no fault, so that no gap can hide a fault; in the others each fault is planted at
 * its own stated rate among the cases that can carry it. Every case is made from a random stream of its own: case i of
 * a seed is the same alone, in any number of cases and on any number of threads.
 */
public final class Cohort {
    /** Share of the cases that have gaps instead of faults. */
    public static final double SHARE_WITH_GAPS = 1.0 / 7;
    /** Share of the possible gaps that a case with gaps has. */
    public static final double GAP_RATE = 0.04;

    private static final List<Fault> FAULTS = Stream.of(
                    RecordFaults.ALL, IndicationFaults.ALL, WireFaults.ALL, CourseFaults.ALL)
            .flatMap(List::stream)
            .toList();
    private static final Map<String, List<Fault>> BY_AREA =
            FAULTS.stream().collect(Collectors.groupingBy(Fault::area, LinkedHashMap::new, Collectors.toList()));
    private static final Map<String, List<PlantedGap>> GAPS_BY_AREA =
            Gaps.ALL.stream().collect(Collectors.groupingBy(PlantedGap::area, LinkedHashMap::new, Collectors.toList()));

    private Cohort() {}

    /** The first {@code n} cases of a seed; the stream may be run in parallel. */
    public static Stream<PlantedCase> generate(long n, long seed) {
        return LongStream.range(0, n).mapToObj(i -> one(seed, i));
    }

    /** Case {@code index} of a seed, counted from 0. */
    public static PlantedCase one(long seed, long index) {
        Draws draws = Draws.of(seed, index);
        Case baseline = Baseline.draw(index, draws);
        return draws.chance(SHARE_WITH_GAPS) ? withGaps(baseline, draws) : withFaults(baseline, draws);
    }

    /** Case {@code index} of a seed before anything was planted in it: every criterion up to its stage has to pass. */
    public static Case clean(long seed, long index) {
        return Baseline.draw(index, Draws.of(seed, index));
    }

    /** A clean case with this one fault alone, or nothing when the fault does not fit the case of that index. */
    public static Optional<PlantedCase> with(Fault fault, long seed, long index) {
        Draws draws = Draws.of(seed, index);
        Case baseline = Baseline.draw(index, draws);
        return fault.fits(baseline)
                ? Optional.of(new PlantedCase(fault.in(baseline, draws), List.of(fault.planted(baseline))))
                : Optional.empty();
    }

    /** A clean case with this one gap alone, or nothing when the gap does not fit the case of that index. */
    public static Optional<PlantedCase> with(PlantedGap gap, long seed, long index) {
        Case baseline = clean(seed, index);
        return gap.fits(baseline)
                ? Optional.of(new PlantedCase(gap.in(baseline), List.of(gap.planted(baseline))))
                : Optional.empty();
    }

    /** All faults that can be planted. */
    public static List<Fault> faults() {
        return FAULTS;
    }

    /** All gaps that can be planted. */
    public static List<PlantedGap> gaps() {
        return Gaps.ALL;
    }

    private static PlantedCase withGaps(Case baseline, Draws draws) {
        return plant(
                baseline,
                chosen(GAPS_BY_AREA, g -> GAP_RATE, g -> g.fits(baseline), draws),
                PlantedGap::in,
                g -> g.planted(baseline));
    }

    private static PlantedCase withFaults(Case baseline, Draws draws) {
        return plant(
                baseline,
                chosen(BY_AREA, Fault::rate, f -> f.fits(baseline), draws),
                (f, c) -> f.in(c, draws),
                f -> f.planted(baseline));
    }

    /** One number per area picks at most one of its entries, so that each keeps its stated rate. */
    private static <T> List<T> chosen(
            Map<String, List<T>> byArea, ToDoubleFunction<T> rate, Predicate<T> fits, Draws draws) {
        List<T> chosen = new ArrayList<>();
        for (List<T> area : byArea.values()) {
            double u = draws.uniform(0, 1);
            for (T t : area) {
                u -= rate.applyAsDouble(t);
                if (u < 0) {
                    if (fits.test(t)) {
                        chosen.add(t);
                    }
                    break;
                }
            }
        }
        return chosen;
    }

    private static <T> PlantedCase plant(
            Case baseline, List<T> chosen, BiFunction<T, Case, Case> change, Function<T, Planted> says) {
        Case made = baseline;
        for (T t : chosen) {
            made = change.apply(t, made);
        }
        return new PlantedCase(made, chosen.stream().map(says).toList());
    }
}
