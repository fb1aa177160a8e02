package dev.fairlead.audit.run;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.audit.outcome.Attained;
import dev.fairlead.audit.source.Item;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Finding;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.model.Case;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A row, for which a case is read without errors and judged without verdicts, says what a full check of the same text
 * says.
 */
class RowMakerTest {
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());
    private static final CheckOptions OPTIONS =
            CheckOptions.USUAL.withoutWorkings().withoutForces();
    private static final String WAIVERS = ",\"waivers\":["
            + "{\"criterion\":\"shape-kept\",\"reason\":\"tried in on a second model with the same result\",\"by\":\"supervisor\",\"date\":\"2026-01-02\",\"expires\":\"2027-12-30\"},"
            + "{\"criterion\":\"overjet-after\",\"reason\":\"seen with the guardian, who prefers it so\",\"by\":\"supervisor\",\"date\":\"2026-01-02\",\"expires\":\"2027-12-30\"},"
            + "{\"criterion\":\"no-such-criterion\",\"reason\":\"short\",\"by\":\"supervisor\",\"date\":\"2026-01-02\",\"expires\":\"2026-01-03\"}]}";

    @Test
    void aRowSaysWhatACheckSays() {
        RowMaker maker = new RowMaker(CHECKER, OPTIONS);
        List<String> ids = CHECKER.rulebase().catalogue().criteria().stream()
                .map(c -> c.id())
                .toList();
        int[] waived = new int[1];
        Cohort.generate(400, 77).forEach(planted -> {
            String json = CaseWriter.json(planted.made()).strip();
            boolean own = planted.made().waivers().isEmpty() && !json.contains("\"waivers\"");
            byte[] text =
                    (own ? json.substring(0, json.length() - 1) + WAIVERS : json).getBytes(StandardCharsets.UTF_8);
            CaseRow row = maker.row(new Item("c:1", new Item.Text(text, CaseFormat.JSON), 0));
            Case read = CaseReader.read(text, "c", CaseFormat.JSON).value().orElseThrow();
            Checked full = CHECKER.check(read, row.hash(), OPTIONS);
            int judged = 0;
            for (CriterionResult r : CHECKER.judge(read, OPTIONS).results()) {
                String id = r.criterion().id();
                assertThat(row.ending(ids.indexOf(id))).as(id).isEqualTo(r.ending());
                assertThat(row.missing().get(id))
                        .as(id)
                        .isEqualTo(r.ending() == Ending.NOT_ASSESSED ? r.missing() : null);
                judged++;
            }
            assertThat(List.of(Ending.values()).stream().mapToInt(row::count).sum())
                    .isEqualTo(judged);
            assertThat(row.waived())
                    .isEqualTo(full.report().findings().all().stream()
                            .filter(f -> f.waiver().isPresent())
                            .map(Finding::id)
                            .toList());
            assertThat(row.notes())
                    .isEqualTo(full.report().findings().waiverNotes().stream()
                            .map(n -> new CaseRow.Note(n.criterion(), n.kind().word(), n.text()))
                            .toList());
            waived[0] += row.waived().size();
        });
        assertThat(waived[0]).isPositive();
    }

    /** However the word for the end is spelt: what came out in the end is told with the errors of what was foretold. */
    @Test
    void theEndIsReadWithItsErrorsHoweverItIsSpelt() {
        RowMaker maker = new RowMaker(CHECKER, OPTIONS);
        int[] ended = new int[1];
        Cohort.generate(60, 78).forEach(planted -> {
            String json = CaseWriter.json(planted.made());
            List<Attained> plain = attained(maker, json);
            assertThat(attained(maker, json.replace("\"holding\":", "\"hol\\u0064ing\":")))
                    .isEqualTo(plain);
            assertThat(plain).isEqualTo(attained(new RowMaker(CHECKER, OPTIONS, true), json));
            ended[0] += plain.stream().anyMatch(a -> a.kind() == Attained.Kind.SPACE) ? 1 : 0;
        });
        assertThat(ended[0]).isPositive();
    }

    private static List<Attained> attained(RowMaker maker, String json) {
        return maker.row(new Item("c:1", new Item.Text(json.getBytes(StandardCharsets.UTF_8), CaseFormat.JSON), 0))
                .details()
                .attained();
    }
}
