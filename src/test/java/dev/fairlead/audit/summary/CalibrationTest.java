package dev.fairlead.audit.summary;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whether comparisons ring when they should, on invented audits whose truth is known: 4 to 12 residents of 5 to 60
 * cases at unequal stages, rates of 1 to 20 %, and warnings and gaps of one case that go together.
 */
class CalibrationTest {
    private static final int ALIKE = 500;
    private static final int PLANTED = 200;
    private static final Catalogue CATALOGUE = Rulebase.builtIn().catalogue();
    private static final List<Criterion> CRITERIA = CATALOGUE.criteria();
    private static final List<String> IDS = CRITERIA.stream().map(Criterion::id).toList();
    private static final int CONSENT = IDS.indexOf("consent-recorded");
    private static final int FACTS = 40;
    private static final List<String> NAMES =
            IntStream.range(0, FACTS).mapToObj(i -> "/fact/" + i).toList();

    /** What one invented audit holds; with a culprit, that resident's first 30 cases are planted. */
    private record World(CaseStore store, List<Group> groups, List<Integer> named) {
        static World of(long seed, boolean consent, boolean gaps) {
            SplittableRandom r = new SplittableRandom(seed);
            int residents = consent || gaps ? 8 : 4 + r.nextInt(9);
            double[] rate = new double[CRITERIA.size()];
            Arrays.setAll(rate, i -> 0.01 * Math.pow(20, r.nextDouble()));
            rate[CONSENT] = 0.036;
            double[] missing = new double[FACTS];
            Arrays.setAll(missing, i -> 0.01 * Math.pow(20, r.nextDouble()));
            CaseStore store = new CaseStore(CRITERIA.size());
            List<Group> groups = new ArrayList<>();
            for (int g = 0; g < residents; g++) {
                boolean culprit = g == 0 && (consent || gaps);
                groups.add(new Group(String.format("r%02d", g), CRITERIA.size()));
                int cases = culprit ? 30 : consent || gaps ? 24 : 5 + r.nextInt(56);
                // residents differ in how far their cases have come
                double late = r.nextDouble();
                for (int i = 0; i < cases; i++) {
                    boolean planted = culprit && i < (consent ? 10 : 30);
                    one(r, store, groups.get(g), g, late, rate, missing, consent && planted, gaps && planted, culprit);
                }
            }
            return new World(
                    store, groups, IntStream.range(0, residents).boxed().toList());
        }

        private static void one(
                SplittableRandom r,
                CaseStore store,
                Group group,
                int number,
                double late,
                double[] rate,
                double[] missing,
                boolean noConsent,
                boolean noFilms,
                boolean culprit) {
            Stage[] all = Stage.values();
            int stage = Math.max(Stage.INDICATION.ordinal(), Math.min(all.length - 1, (int)
                    (all.length * Math.pow(r.nextDouble(), 1.6 - 1.2 * late))));
            double[] ofStep = new double[all.length];
            double ofCase = Math.exp(0.5 * normal(r));
            Arrays.setAll(ofStep, s -> Math.exp(0.5 * normal(r)));
            byte[] endings = new byte[CRITERIA.size()];
            for (int c = 0; c < endings.length; c++) {
                int step = CRITERIA.get(c).stage().ordinal();
                double p = Math.min(0.9, rate[c] * ofCase * ofStep[step] * 0.78);
                boolean warns = c == CONSENT && culprit ? noConsent : r.nextDouble() < p;
                endings[c] = (byte)
                        (step > stage
                                ? -1
                                : (warns ? r.nextDouble() < 0.2 ? Ending.STOP : Ending.CAUTION : Ending.PASS)
                                        .ordinal());
            }
            long asked = (1L << FACTS) - 1;
            long gone = 0;
            double careless = Math.exp(0.8 * normal(r)) * 0.73;
            for (int f = 0; f < FACTS; f++) {
                gone |= r.nextDouble() < Math.min(0.9, missing[f] * careless) || noFilms && f < 6 ? 1L << f : 0;
            }
            CaseRow row = new CaseRow(
                    "",
                    CaseRow.Kind.JUDGED,
                    "",
                    "c",
                    "",
                    all[stage],
                    group.name(),
                    "",
                    endings,
                    List.of(),
                    Map.of(),
                    List.of(),
                    List.of(),
                    0,
                    List.of(),
                    "",
                    CaseRow.Course.BEFORE_WIRE,
                    CaseRow.Details.NONE,
                    false);
            group.add(stage, endings, false);
            group.addFacts(stage, new long[] {asked}, new long[] {gone}, FACTS, Long.bitCount(gone));
            store.add(row, number, new char[Long.bitCount(gone)]);
            store.asked(store.size() - 1, FACTS);
        }

        private static double normal(SplittableRandom r) {
            return Math.sqrt(-2 * Math.log(1 - r.nextDouble())) * Math.cos(2 * Math.PI * r.nextDouble());
        }

        Comparisons compared() {
            return Comparisons.of(store, groups, named, IDS, NAMES);
        }
    }

    private static Stream<Comparisons> worlds(int n, boolean consent, boolean gaps) {
        return IntStream.range(0, n)
                .parallel()
                .mapToObj(i -> World.of(1000L * n + i, consent, gaps).compared());
    }

    /** Budgets of four families add up to 6 %; more than 13 % of 500 would be chance once in ten million times. */
    @Test
    void whereAllAreAlikeFewAuditsNameAnybody() {
        List<Comparisons> all = worlds(ALIKE, false, false).toList();
        long named = all.stream().filter(c -> !c.out().isEmpty()).count();
        System.out.printf("alike: %.1f %% of %d audits name anybody%n", 100.0 * named / ALIKE, ALIKE);
        assertThat(named).isLessThanOrEqualTo(ALIKE * 13 / 100);
        double watched = all.stream()
                .mapToLong(c -> c.signals().stream()
                        .filter(s -> s.family() == Signal.Family.CRITERION)
                        .count())
                .average()
                .orElseThrow();
        System.out.printf("alike: %.2f single criteria to watch in an audit, 1 promised%n", watched);
        assertThat(watched).isBetween(0.5, 1.3);
    }

    /** Ten of thirty cases without consent against 3.6 % of the others'. */
    @Test
    void aResidentWithoutConsentInAThirdOfTheCasesIsNamed() {
        long named = worlds(PLANTED, true, false)
                .filter(c -> c.out().stream()
                        .anyMatch(s -> s.resident().equals("r00") && s.item().equals("consent-recorded")))
                .count();
        System.out.printf("consent missing in 10 of 30: named in %.1f %% of %d%n", 100.0 * named / PLANTED, PLANTED);
        assertThat(named).isGreaterThanOrEqualTo(PLANTED * 95 / 100);
    }

    /** Films missing everywhere, with nothing wrong in what is judged: that must not look better than average. */
    @Test
    void aResidentWhoLeavesFilmsOutIsNamed() {
        long named = worlds(PLANTED, false, true)
                .filter(c -> c.out().stream()
                        .anyMatch(s -> s.resident().equals("r00") && s.family() == Signal.Family.MISSING))
                .count();
        System.out.printf("films missing in 30 of 30: named in %.1f %% of %d%n", 100.0 * named / PLANTED, PLANTED);
        assertThat(named).isGreaterThanOrEqualTo(PLANTED * 95 / 100);
    }
}
