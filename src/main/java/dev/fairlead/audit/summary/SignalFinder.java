package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.Alarms;
import dev.fairlead.audit.statistics.ExactStrata;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.audit.statistics.Ratio;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Looks through the families of comparisons, each with its own budget of false alarms. */
final class SignalFinder {
    /**
     * Criteria where one case too many is one too many: few, so that each can be seen sooner. Those that a rulebase
     * does not have are passed over.
     */
    static final Set<String> SAFETY = Set.of(
            "consent-recorded",
            "medical-history-read",
            "alloy-sensitivity",
            "panoramic-seen",
            "hygiene-and-caries",
            "eye-and-airway-protection",
            "cut-end-caught",
            "distal-ends-flush",
            "instructions-given",
            "tissue-and-root-signs");

    private static final Rate NOTHING = new Rate(0, 0);
    private static final int STAGES = Stage.values().length;

    private record Pair(
            Signal.Family family, int resident, String item, Rate own, Rate others, ExactStrata chances, double p) {}

    private interface Count {
        int of(Group g, int stage);
    }

    private final List<Group> residents;
    private final List<Group> all;
    private final List<Signal> found = new ArrayList<>();

    /** {@code residents} are those with a code; {@code all} are these and everybody else. */
    SignalFinder(List<Group> residents, List<Group> all) {
        this.residents = residents;
        this.all = all;
    }

    /** Everything taken together, tested by Holm's steps; kinds of scores stand from {@code first} on. */
    void together(
            List<Signal.Family> families,
            double budget,
            double[][] p,
            Ratio[][] ratios,
            Ratio.Side[][] own,
            int first) {
        List<int[]> tests = new ArrayList<>();
        for (int f = 0; f < families.size(); f++) {
            for (int g = 0; g < residents.size(); g++) {
                if (residents.get(g).cases() >= Comparisons.FEWEST_CASES) {
                    tests.add(new int[] {f, g});
                }
            }
        }
        double[] tested = tests.stream().mapToDouble(t -> p[first + t[0]][t[1]]).toArray();
        boolean[] out = Alarms.holm(budget, tested);
        for (int i = 0; i < tested.length; i++) {
            if (out[i] || tested[i] <= Comparisons.WATCHED / tested.length) {
                int k = first + tests.get(i)[0];
                int g = tests.get(i)[1];
                found.add(new Signal(
                        families.get(tests.get(i)[0]),
                        residents.get(g).name(),
                        "",
                        own[k][g].observed(),
                        own[k][g].expected(),
                        NOTHING,
                        NOTHING,
                        ratios[k][g],
                        tested[i],
                        out[i]));
            }
        }
    }

    /** Single criteria; returns the threshold of p. */
    double criteria(List<String> ids, boolean safety, double budget) {
        List<Pair> pairs = new ArrayList<>();
        for (int c = 0; c < ids.size(); c++) {
            int criterion = c;
            if (SAFETY.contains(ids.get(c)) == safety) {
                pairs(
                        safety ? Signal.Family.SAFETY : Signal.Family.CRITERION,
                        ids.get(c),
                        (g, s) -> g.judged(s, criterion),
                        (g, s) -> g.warned(s, criterion),
                        pairs);
            }
        }
        return told(pairs, budget);
    }

    /** Single facts; returns the threshold of p. */
    double facts(List<String> names, double budget) {
        List<Pair> pairs = new ArrayList<>();
        for (int f = 0; f < names.size(); f++) {
            int fact = f;
            pairs(Signal.Family.FACT, names.get(f), (g, s) -> g.asked(s, fact), (g, s) -> g.missing(s, fact), pairs);
        }
        return told(pairs, budget);
    }

    private void pairs(Signal.Family family, String item, Count judged, Count warned, List<Pair> to) {
        int[] allJudged = new int[STAGES];
        int[] allWarned = new int[STAGES];
        int total = 0;
        int hits = 0;
        for (Group g : all) {
            for (int s = 0; s < STAGES; s++) {
                allJudged[s] += judged.of(g, s);
                allWarned[s] += warned.of(g, s);
                total += judged.of(g, s);
                hits += warned.of(g, s);
            }
        }
        if (hits == 0) {
            return;
        }
        for (int r = 0; r < residents.size(); r++) {
            Group g = residents.get(r);
            int[] own = new int[STAGES];
            int n = 0;
            int seen = 0;
            for (int s = 0; s < STAGES; s++) {
                own[s] = judged.of(g, s);
                n += own[s];
                seen += warned.of(g, s);
            }
            if (g.cases() >= Comparisons.FEWEST_CASES && n > 0) {
                ExactStrata chances = ExactStrata.of(own, allJudged, allWarned);
                to.add(new Pair(
                        family,
                        r,
                        item,
                        new Rate(seen, n),
                        new Rate(hits - seen, total - n),
                        chances,
                        seen == 0 ? 1 : chances.p(seen)));
            }
        }
    }

    private double told(List<Pair> pairs, double budget) {
        List<ExactStrata> chances = pairs.stream().map(Pair::chances).toList();
        double out = Alarms.threshold(chances, budget);
        double watch = Alarms.threshold(chances, Comparisons.WATCHED);
        for (Pair x : pairs) {
            if (x.own().count() > 0 && x.p() <= watch && x.p() < 0.5) {
                found.add(new Signal(
                        x.family(),
                        residents.get(x.resident()).name(),
                        x.item(),
                        x.own().count(),
                        x.own().of() * x.others().share(),
                        x.own(),
                        x.others(),
                        Ratio.NONE,
                        x.p(),
                        x.p() <= out));
            }
        }
        return out;
    }

    /** Cases of the resident in the middle among those compared. */
    int usualCases() {
        int[] n = residents.stream()
                .mapToInt(Group::cases)
                .filter(c -> c >= Comparisons.FEWEST_CASES)
                .sorted()
                .toArray();
        return n.length == 0 ? 0 : n[n.length / 2];
    }

    /** What stands out first, then what is to be watched, each in order of families and codes. */
    List<Signal> found() {
        return found.stream()
                .sorted(java.util.Comparator.comparing((Signal s) -> !s.out())
                        .thenComparing(Signal::family)
                        .thenComparing(Signal::resident)
                        .thenComparing(Signal::item))
                .toList();
    }
}
