package dev.fairlead.audit.compare;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.Each;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;

/**
 * Moves one threshold over a range, and tells at each value how many cases would be warned; each case is measured once.
 */
public final class Sweep {
    /** How many values lie on a curve when nothing else is said. */
    public static final int STEPS = 21;

    public static final int MOST_STEPS = 201;

    /** What one value of the threshold gives for one criterion. */
    public record Point(double value, long stop, long caution, long pass, long notAssessed) {
        public Rate warnRate() {
            return new Rate(stop + caution, stop + caution + pass);
        }
    }

    /** The points of one criterion that reads the threshold. */
    public record Curve(String criterion, List<Point> points) {}

    /** All curves of a threshold. */
    public record Result(Threshold threshold, List<Curve> curves, long cases, long unread) {}

    private final Checker checker;
    private final Threshold threshold;
    private final List<Judge> judges = new ArrayList<>();
    private final double[] values;
    private final BitSet wanted = new BitSet();
    private final List<Criterion> criteria;
    private final long[][][] counts;
    private long cases;
    private long unread;

    /** Values of {@code from} to {@code to} in the threshold's unit, both within its allowed range. */
    public Sweep(Rulebase rules, String name, double from, double to, int steps) {
        this.checker = new Checker(rules);
        this.threshold = rules.catalogue().threshold(name);
        this.criteria = rules.catalogue().criteria();
        this.values = new double[steps];
        for (int i = 0; i < steps; i++) {
            // nine decimals take off the binary dust, so that 1.5 is 1.5
            values[i] = Math.rint((from + (to - from) * i / Math.max(1, steps - 1)) * 1e9) / 1e9;
            judges.add(rules.withThresholds(Map.of(name, values[i])).judge());
        }
        for (int i = 0; i < criteria.size(); i++) {
            wanted.set(i, criteria.get(i).limits().contains(name));
        }
        this.counts = new long[criteria.size()][steps][Ending.values().length];
    }

    /** Runs over the sources. */
    public Result run(Sources sources, Audit.Settings settings, LongConsumer reached) {
        Each.<Reader.Got<Ending[][]>>run(
                sources,
                settings.threads(),
                settings.limit(),
                i -> Reader.with(i, c -> endings(c, settings.check())),
                Reader::givenUp,
                this::add,
                reached);
        List<Curve> curves = new ArrayList<>();
        for (int c = wanted.nextSetBit(0); c >= 0; c = wanted.nextSetBit(c + 1)) {
            List<Point> points = new ArrayList<>();
            for (int v = 0; v < values.length; v++) {
                long[] n = counts[c][v];
                points.add(new Point(
                        values[v],
                        n[Ending.STOP.ordinal()],
                        n[Ending.CAUTION.ordinal()],
                        n[Ending.PASS.ordinal()],
                        n[Ending.NOT_ASSESSED.ordinal()]));
            }
            curves.add(new Curve(criteria.get(c).id(), points));
        }
        return new Result(threshold, curves, cases, unread);
    }

    private Ending[][] endings(Case c, CheckOptions options) {
        List<CaseFact> facts = checker.facts(c, options);
        Stage reached = options.reach(c).judged();
        return judges.stream()
                .map(j -> j.judge(facts, reached, wanted).endings())
                .toArray(Ending[][]::new);
    }

    private void add(Reader.Got<Ending[][]> got) {
        if (got.value() == null) {
            unread++;
            return;
        }
        cases++;
        for (int v = 0; v < values.length; v++) {
            for (int c = wanted.nextSetBit(0); c >= 0; c = wanted.nextSetBit(c + 1)) {
                Ending e = got.value()[v][c];
                if (e != null) {
                    counts[c][v][e.ordinal()]++;
                }
            }
        }
    }
}
