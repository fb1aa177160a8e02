package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.Alarms;
import dev.fairlead.audit.statistics.Ratio;
import dev.fairlead.audit.statistics.StageShuffle;
import java.util.Arrays;
import java.util.List;

/**
 * Each resident against all others, one-sided: only more than the others is told, and nobody is ranked.
 *
 * @param lines one for each resident who has a code, in order of the codes
 * @param signals what stands out, then what is to be watched
 * @param compared how many residents had cases enough to be compared
 * @param detectable what would have been seen
 */
public record Comparisons(List<Line> lines, List<Signal> signals, int compared, Detectable detectable) {
    /** Residents with fewer cases are shown and not compared. */
    public static final int FEWEST_CASES = 5;

    /** Expected false alarms of each family when all are alike. */
    public static final double BUDGET = 0.02;

    /** The same for facts, once for all together and once for single ones. */
    public static final double FACTS_BUDGET = 0.01;

    /** Expected false entries of each family on the list to watch. */
    public static final double WATCHED = 1;

    /** From so many groups on, trifling differences would ring: the spread between groups is allowed for. */
    static final int MANY_GROUPS = 20;

    static final long SEED = 20_260_101;

    /**
     * A resident.
     *
     * @param burden warnings over expected, divided by the same of the others
     * @param stops the same for stops
     * @param missing the same for missing facts
     */
    public record Line(
            Group group,
            double warnings,
            double expected,
            Ratio burden,
            double stopped,
            double expectedStops,
            Ratio stops,
            Ratio missing) {
        public boolean few() {
            return group.cases() < FEWEST_CASES;
        }
    }

    /**
     * What would have been seen in four of five such residents.
     *
     * @param cases of a usual resident
     * @param burden ratio of warnings
     * @param safety rate of one safety criterion where the others have 3 %
     * @param other the same of another criterion
     */
    public record Detectable(int cases, double burden, double safety, double other) {}

    /** What stands out. */
    public List<Signal> out() {
        return signals.stream().filter(Signal::out).toList();
    }

    /** What is to be watched: about one entry of each family is chance. */
    public List<Signal> watch() {
        return signals.stream().filter(s -> !s.out()).toList();
    }

    /**
     * @param all groups in the order of the residents' numbers in {@code store}
     * @param named numbers of those who have a code, in order of the codes
     * @param ids of the criteria, in order of the catalogue
     * @param facts pointers of the facts that are asked, by number
     */
    static Comparisons of(CaseStore store, List<Group> all, List<Integer> named, List<String> ids, List<String> facts) {
        List<Group> residents = named.stream().map(all::get).toList();
        int n = store.size();
        int groups = residents.size();
        int[] place = new int[all.size()];
        Arrays.fill(place, -1);
        int compared = 0;
        for (int g = 0; g < groups; g++) {
            place[named.get(g)] = g;
            compared += residents.get(g).cases() >= FEWEST_CASES ? 1 : 0;
        }
        int[] stage = new int[n];
        int[] group = new int[n];
        for (int i = 0; i < n; i++) {
            stage[i] = store.stage(i);
            group[i] = place[store.resident(i)];
        }
        Expectation[] kinds = {
            Expectation.warnings(store, c -> true), Expectation.stops(store), Expectation.missing(store)
        };
        double[][] scores = new double[kinds.length][n];
        Ratio.Side[][] own = new Ratio.Side[kinds.length][groups];
        Ratio.Side[] sums = new Ratio.Side[kinds.length];
        for (int k = 0; k < kinds.length; k++) {
            sums[k] = new Ratio.Side();
            Arrays.setAll(own[k], g -> new Ratio.Side());
            for (int i = 0; i < n; i++) {
                double o = kinds[k].observed()[i];
                double e = kinds[k].expected()[i];
                scores[k][i] = StageShuffle.score(o, e);
                sums[k].add(o, e);
                if (group[i] >= 0) {
                    own[k][group[i]].add(o, e);
                }
            }
        }
        Ratio[][] ratios = new Ratio[kinds.length][groups];
        for (int k = 0; k < kinds.length; k++) {
            for (int g = 0; g < groups; g++) {
                ratios[k][g] = Ratio.of(own[k][g], sums[k].without(own[k][g]));
            }
        }
        List<Line> lines = new java.util.ArrayList<>();
        for (int g = 0; g < groups; g++) {
            lines.add(new Line(
                    residents.get(g),
                    own[0][g].observed(),
                    own[0][g].expected(),
                    ratios[0][g],
                    own[1][g].observed(),
                    own[1][g].expected(),
                    ratios[1][g],
                    ratios[2][g]));
        }
        if (groups < 2 || compared == 0) {
            return new Comparisons(lines, List.of(), 0, new Detectable(0, Double.NaN, 1, 1));
        }
        StageShuffle.Result[][] shuffled = StageShuffle.of(scores, stage, group, groups, SEED);
        SignalFinder finder = new SignalFinder(residents, all);
        double[][] p = new double[kinds.length][groups];
        for (int k = 0; k < kinds.length; k++) {
            double tau2 = compared >= MANY_GROUPS ? spread(ratios[k]) : 0;
            for (int g = 0; g < groups; g++) {
                p[k][g] = compared >= MANY_GROUPS ? ratios[k][g].exceeds(tau2) : shuffled[k][g].p();
            }
        }
        finder.together(List.of(Signal.Family.BURDEN, Signal.Family.STOPS), BUDGET, p, ratios, own, 0);
        double safety = finder.criteria(ids, true, BUDGET);
        double other = finder.criteria(ids, false, BUDGET);
        finder.together(List.of(Signal.Family.MISSING), FACTS_BUDGET, p, ratios, own, 2);
        finder.facts(facts, FACTS_BUDGET);
        int usual = finder.usualCases();
        double error = Arrays.stream(ratios[0])
                .filter(r -> !r.none())
                .mapToDouble(Ratio::error)
                .sorted()
                .skip(Arrays.stream(ratios[0]).filter(r -> !r.none()).count() / 2)
                .findFirst()
                .orElse(Double.NaN);
        return new Comparisons(
                lines,
                finder.found(),
                compared,
                new Detectable(
                        usual,
                        Ratio.detectable(error, BUDGET / (2 * compared)),
                        Alarms.detectable(usual, n - usual, 0.03, safety),
                        Alarms.detectable(usual, n - usual, 0.03, other)));
    }

    private static double spread(Ratio[] ratios) {
        List<Ratio> some = Arrays.stream(ratios).filter(r -> !r.none()).toList();
        return some.size() < 2
                ? 0
                : Ratio.between(
                        some.stream().mapToDouble(r -> Math.log(r.value())).toArray(),
                        some.stream().mapToDouble(r -> r.error() * r.error()).toArray());
    }
}
