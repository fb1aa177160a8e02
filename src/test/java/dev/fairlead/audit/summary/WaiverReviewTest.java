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
import dev.fairlead.rules.verdict.Ending;
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

    /** By step or in all, the same facts are missing. */
    @Test
    void whatEachStepIsGivenAddsUpToWhatIsGivenInAll() throws IOException {
        new Audit(CHECKER, Audit.Settings.USUAL)
                .run(
                        new Sources(
                                List.of(
                                        Path.of("cases/heron-07-clean.yaml"),
                                        Path.of("cases/knot-08-half-missing.yaml"),
                                        Path.of("cases/godwit-02-target-not-reached.yaml")),
                                Mapping.NONE),
                        () -> tally::add,
                        n -> {});
        Summary s = tally.summary();
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
