package dev.fairlead.audit.summary;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.check.Checker;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Who answers for what, and what each step is given of the facts that it asks for. */
class WaiverReviewTest {
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());
    private static final List<String> IDS =
            CHECKER.rulebase().catalogue().criteria().stream().map(c -> c.id()).toList();

    private static final String MARCH = "cases/knot-08-half-missing.yaml";
    private static final String JULY = "cases/heron-07-clean.yaml";
    private static final String JULY_TOO = "cases/godwit-02-target-not-reached.yaml";

    private final Tally tally = new Tally(CHECKER, 0);

    private void add(String id, String resident, int warnings, CaseRow.Answered... waivers) {
        byte[] endings = new byte[IDS.size()];
        Arrays.fill(endings, (byte) Ending.PASS.ordinal());
        Arrays.fill(endings, 0, warnings, (byte) Ending.CAUTION.ordinal());
        tally.add(new Audit.Done(
                new CaseRow(
                        id,
                        CaseRow.Kind.JUDGED,
                        "",
                        id,
                        "",
                        Stage.HOLDING,
                        resident,
                        "2026-06-30",
                        endings,
                        Arrays.stream(waivers).map(CaseRow.Answered::criterion).toList(),
                        Map.of(),
                        List.of(),
                        List.of(),
                        0,
                        List.of(),
                        "2026-06-30",
                        CaseRow.Course.HOLDING,
                        new CaseRow.Details("", List.of(waivers), List.of(), List.of()),
                        false),
                new Item(id, new Item.Trouble(""), 0)));
    }

    @Test
    void waiversAreToldByTheirEndWithWhoAndWhyAndHowOften() {
        add("a", "r1", 4, new CaseRow.Answered(IDS.get(0), "supervisor", "2026-06-01", "2026-12-31", "seen with care"));
        add(
                "b",
                "r1",
                2,
                new CaseRow.Answered(IDS.get(1), "clinician", "2026-01-01", "2026-07-15", "a second model was made"));
        add("c", "r2", 3);
        WaiverReview review = tally.summary().waivers();
        assertThat(review.count()).isEqualTo(2);
        assertThat(review.soon()).extracting(WaiverReview.One::caseId).containsExactly("b", "a");
        WaiverReview.One first = review.soon().get(0);
        assertThat(first.age()).as("1 January to 30 June").isEqualTo(180);
        assertThat(first.left()).isEqualTo(15);
        assertThat(first.expiring()).isTrue();
        assertThat(review.expiring()).isEqualTo(1);
        assertThat(first.waiver().reason()).isEqualTo("a second model was made");
        assertThat(review.residents()).containsEntry("r1", new Rate(2, 6)).containsEntry("r2", new Rate(0, 3));
        assertThat(review.roles()).containsExactly(new NamedCount("clinician", 1), new NamedCount("supervisor", 1));
    }

    /** A case with half of its facts missing in March; two whole ones in July. */
    @Test
    void whatEachPeriodIsGivenIsThatOfItsOwnCases() throws IOException {
        Summary s = summary(MARCH, JULY, JULY_TOO);
        assertThat(s.periods())
                .extracting(Group::name)
                .containsExactly("2026-03", "2026-04", "2026-05", "2026-06", "2026-07");
        ClusteredRate march = s.periods().get(0).completeness();
        ClusteredRate july = s.periods().get(4).completeness();
        for (Object[] alone : new Object[][] {{march, summary(MARCH)}, {july, summary(JULY, JULY_TOO)}}) {
            ClusteredRate own = ((Summary) alone[1]).completeness();
            ClusteredRate period = (ClusteredRate) alone[0];
            // a fact that no criterion was seen to wait for before is asked of the cases that follow, so that what is
            // asked may differ a little; what is missing does not
            assertThat(period.of() - period.count()).isEqualTo(own.of() - own.count());
            assertThat(period.of()).isBetween(own.of(), own.of() + own.of() / 20);
        }
        assertThat(march.share()).isLessThan(0.9 * july.share());
        assertThat(s.periods().get(2).completeness().of()).isZero();
        assertThat(march.of() + july.of()).isEqualTo(s.completeness().of());
    }

    private static Summary summary(String... cases) throws IOException {
        Tally of = new Tally(CHECKER, 0);
        new Audit(CHECKER, Audit.Settings.USUAL)
                .run(new Sources(Arrays.stream(cases).map(Path::of).toList(), Mapping.NONE), () -> of::add, n -> {});
        return of.summary();
    }

    /** By step or in all, the same facts are missing. */
    @Test
    void whatEachStepIsGivenAddsUpToWhatIsGivenInAll() throws IOException {
        Summary s = summary(MARCH, JULY, JULY_TOO);
        long asked =
                s.givenByStep().values().stream().mapToLong(ClusteredRate::of).sum();
        long given = s.givenByStep().values().stream()
                .mapToLong(ClusteredRate::count)
                .sum();
        assertThat(asked - given)
                .isPositive()
                .isEqualTo(s.missing().stream().mapToLong(g -> g.rate().count()).sum())
                .isEqualTo(s.completeness().of() - s.completeness().count());
        assertThat(asked).isEqualTo(s.completeness().of());
        assertThat(s.givenByStep().get(Stage.RECORDS).of()).isPositive();
    }
}
