package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.findings.Report;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.text.ReportText;
import dev.fairlead.report.text.WorkText;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The plan of a demo case from file to report, with the numbers of the file worked out by hand. */
class PlanTest {
    private static final Rulebase RULES = Rulebase.load(Path.of("rules"));
    private static Checker checker;
    private static Report report;
    private static Case subject;

    private static Checked check(CheckOptions options) throws IOException {
        Path file = Path.of("cases/oystercatcher-04-sided-plan.yaml");
        return checker.check(
                CaseReader.read(Files.readAllBytes(file), file.toString(), CaseFormat.BY_NAME)
                        .value()
                        .orElseThrow(),
                "0",
                options);
    }

    @BeforeAll
    static void checkOnce() throws IOException {
        checker = new Checker(RULES);
        Checked checked = check(CheckOptions.USUAL);
        subject = checked.subject();
        report = checked.report();
    }

    private static Working working(String id) {
        return report.workings().stream()
                .filter(w -> w.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id));
    }

    private static double number(String id) {
        return working(id).value().value();
    }

    @Test
    void incisorsAfterThePlan() {
        // plan 2 mm left, 3 mm right: mean 2.5, most 3; overjet 5.5 mm, FMA 26.25 degrees (mean of 26 and 26.5)
        assertThat(number("position.overjet-after")).isEqualTo(5.5 - 3, within(1e-9));
        double after = number("position.inclination-after");
        assertThat(number("position.compensated-after")).isEqualTo(after + 26.25 - 25, within(1e-9));
        assertThat(number("position.fmia-after")).isEqualTo(180 - 26.25 - after, within(1e-9));
        // Tweed: 0.8 mm of both sides' room per degree
        assertThat(number("position.tweed-room")).isEqualTo(0.8 * (after - 84.5), within(1e-9));
        assertThat(working("position.tweed-room").value().unit().symbol()).isEqualTo("mm");
    }

    @Test
    void everythingThatAPlanIsJudgedByIsWorkedOut() {
        String text = WorkText.of(report.workings(), subject, RULES.catalogue().sources());
        for (String part : List.of(
                "fit of the beta function",
                "fit of the catenary",
                "fit of the conic",
                "fit of the sixth-degree polynomial",
                "fit of the cubic spline",
                "form index",
                "Square up to",
                "misfit of the wire's form",
                "change of canine width",
                "compensated for the mandibular plane",
                "Published figures span",
                "shift of the front to the left",
                "turn of the front to the left",
                "by the 2:1 rule",
                "activations still to come, both sides at each visit",
                "Leeway starts to be lost",
                "chance that a second primary molar",
                "share of the stand-off that is run down between visits, left")) {
            assertThat(text.replaceAll("\\s+", " ")).contains(part);
        }
        assertThat(text.lines()).allMatch(l -> dev.fairlead.drawing.Wrap.columns(l) <= 80);
        assertThat(report.workings().stream().map(Working::group).distinct().count())
                .isEqualTo(text.lines().filter(l -> l.matches("[A-Z][A-Z ]+")).count());
    }

    @Test
    void chancesAndRepeatsAreInEveryForm() throws IOException {
        assertThat(report.repeats())
                .isNotEmpty()
                .extracting(r -> -Math.rint(r.fewerFlips() * 1e9))
                .isSorted();
        assertThat(report.repeats())
                .allMatch(r -> r.pointer().startsWith("/")
                        && !r.words().isBlank()
                        && !r.criteria().isEmpty());
        assertThat(report.findings().all()).allMatch(f -> f.flip().isPresent());
        String text = ReportText.of(report, ReportText.Detail.USUAL);
        assertThat(text)
                .contains("MEASURE AGAIN FIRST")
                .contains(report.repeats().get(0).words());
        assertThat(ReportJson.of(report, false)
                        .at("/certainty/repeatFirst/0/pointer")
                        .asText())
                .isEqualTo(report.repeats().get(0).pointer());
        Report none = check(CheckOptions.USUAL.with(Doubting.NONE)).report();
        assertThat(none.repeats()).isEmpty();
        assertThat(ReportText.of(none, ReportText.Detail.USUAL)).doesNotContain("MEASURE AGAIN FIRST");
        assertThat(ReportJson.of(none, false).has("certainty")).isFalse();
    }

    @Test
    void theSeedDecidesTheDraws() throws IOException {
        CheckOptions drawn = CheckOptions.USUAL.with(Doubting.drawn(200, 7));
        String one = ReportJson.text(check(drawn).report(), true);
        assertThat(ReportJson.text(check(drawn).report(), true)).isEqualTo(one);
        assertThat(ReportJson.text(
                        check(CheckOptions.USUAL.with(Doubting.drawn(200, 8))).report(), true))
                .isNotEqualTo(one);
    }
}
