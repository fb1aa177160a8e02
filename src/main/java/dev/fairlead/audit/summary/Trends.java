package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.Alarms;
import dev.fairlead.audit.statistics.Trend;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Whether it gets better: warnings over expected by time, in all, by step and by resident.
 *
 * @param lines each with its trend, or without where there is too little to tell
 */
public record Trends(List<Line> lines) {
    private static final double YEAR = 365.25;
    private static final int FEWEST_CASES_OF_A_STEP = 30;
    /** With more cases p is that of the fit: shuffles tell the same. */
    private static final int MOST_SHUFFLED = 1_000;

    /** What is followed over time. */
    public enum Of {
        ALL,
        STEP,
        RESIDENT
    }

    /**
     * One of them.
     *
     * @param name step or code of the resident; empty for all
     * @param trend null where there are too few cases, warnings or months
     * @param out stands out from chance among all trends told here
     */
    public record Line(
            Of of,
            String name,
            int cases,
            int warnings,
            @Nullable Trend trend,
            boolean out) {
        public boolean tooFew() {
            return trend == null;
        }
    }

    /** Variance of warnings over their mean, at least 1, as the fit over all cases found it. */
    public double spread() {
        Trend all = lines.isEmpty() ? null : lines.get(0).trend();
        return all == null ? 2 : all.spread();
    }

    static Trends of(CaseStore s, List<Group> all, List<Integer> named, List<Stage> stageOfCriterion) {
        Expectation every = Expectation.warnings(s, c -> true);
        List<Supplier<Line>> asked = new ArrayList<>();
        asked.add(() -> line(Of.ALL, "", s, every, i -> true, Trend.FEWEST_CASES));
        for (Stage step : Stage.values()) {
            asked.add(() -> line(
                    Of.STEP,
                    step.word(),
                    s,
                    Expectation.warnings(s, c -> stageOfCriterion.get(c) == step),
                    i -> s.stage(i) >= step.ordinal(),
                    FEWEST_CASES_OF_A_STEP));
        }
        for (int r : named) {
            asked.add(
                    () -> line(Of.RESIDENT, all.get(r).name(), s, every, i -> s.resident(i) == r, Trend.FEWEST_CASES));
        }
        // each goes over all cases, with nothing else left to do
        List<Line> lines = asked.parallelStream().map(Supplier::get).toList();
        double[] p = lines.stream()
                .map(Line::trend)
                .filter(Objects::nonNull)
                .mapToDouble(Trend::p)
                .toArray();
        boolean[] out = Alarms.holm(Comparisons.BUDGET, p);
        List<Line> told = new ArrayList<>();
        int next = 0;
        for (Line l : lines) {
            told.add(l.tooFew() ? l : new Line(l.of(), l.name(), l.cases(), l.warnings(), l.trend(), out[next++]));
        }
        return new Trends(told);
    }

    private static Line line(Of of, String name, CaseStore s, Expectation x, IntPredicate meant, int fewest) {
        int n = 0;
        double warnings = 0;
        int first = Integer.MAX_VALUE;
        int last = Integer.MIN_VALUE;
        for (int i = 0; i < s.size(); i++) {
            if (meant.test(i) && s.day(i) != CaseStore.NO_DAY && x.expected()[i] > 0) {
                n++;
                warnings += x.observed()[i];
                first = Math.min(first, s.day(i));
                last = Math.max(last, s.day(i));
            }
        }
        if (n < fewest || warnings < Trend.FEWEST_WARNINGS || last - first < YEAR * Trend.SHORTEST_YEARS) {
            return new Line(of, name, n, (int) warnings, null, false);
        }
        double[] o = new double[n];
        double[] e = new double[n];
        double[] t = new double[n];
        int[] stage = new int[n];
        int at = 0;
        for (int i = 0; i < s.size(); i++) {
            if (meant.test(i) && s.day(i) != CaseStore.NO_DAY && x.expected()[i] > 0) {
                o[at] = x.observed()[i];
                e[at] = x.expected()[i];
                t[at] = (s.day(i) - first) / YEAR;
                stage[at++] = s.stage(i);
            }
        }
        Trend fit = Trend.of(o, e, t);
        return new Line(
                of,
                name,
                n,
                (int) warnings,
                fit == null ? null : n <= MOST_SHUFFLED ? fit.tested(o, e, t, stage, Comparisons.SEED) : fit.byFit(),
                false);
    }
}
