package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Which worked numbers belong to a finding, and what a report says of repeating. */
class ReportTest {
    private static final String OVERJET = "/bite/overjet";

    private static Working working(String id, Measured value) {
        return Working.of(id, "Bite", id, value, "", "", "");
    }

    private static Report report(Findings findings, Working... workings) {
        Reach reach = new Reach(Optional.empty(), Stage.RECORDS, Stage.RECORDS, Optional.empty(), Optional.empty());
        return Report.of(
                "0",
                new RulebaseUsed("1", "", Map.of()),
                new Subject("a-1", "", reach, OptionalInt.empty()),
                List.of(),
                findings,
                List.of(),
                List.of(),
                List.of(workings));
    }

    /** Of an overjet of 2.5 ± 0.5 mm that is held against a limit; 1 in = 25.4 mm. */
    @Test
    void aFindingHasTheWorkingsOfItsValueAndItsError() {
        Rulebase rulebase = ProjectRules.rulebase();
        Findings findings = Findings.of(
                rulebase.judge().judge(FindingsTest.overjetAfter(2.5, 0.5)),
                rulebase.catalogue(),
                List.of(),
                Optional.empty());
        Report report = report(
                findings,
                working("same", Measured.of(2.5, Unit.MM, OVERJET, 0.5)),
                working("in inches", Measured.of(2.5 / 25.4, Unit.INCH, OVERJET, 0.5 / 25.4)),
                working("of no measurement", Measured.of(2.5, Unit.MM, "a published spread", 0.5)),
                working("another value", Measured.of(2.6, Unit.MM, OVERJET, 0.5)),
                working("another error", Measured.of(2.5, Unit.MM, OVERJET, 0.6)),
                working("another unit", Measured.of(2.5, Unit.RATIO, OVERJET, 0.5)),
                working("of another measurement", Measured.of(2.5, Unit.MM, "/bite/overbite", 0.5)),
                working("not known", Measured.unknown(OVERJET)));
        assertThat(report.workingsOf(findings.of("overjet-after")))
                .extracting(Working::id)
                .containsExactly("same", "in inches", "of no measurement");
        assertThat(report.workingsOf(findings.of("habits-seen"))).isEmpty();
    }

    @Test
    void whatToRepeatIsToldOnceItWasAsked() {
        Report report = report(new Findings(List.of(), List.of()));
        assertThat(report.repeats()).isEmpty();
        RepeatAdvice width = new RepeatAdvice("/teeth/42/width", 0.4, List.of("space-adds-up"));
        Report sure = report.with(report.findings(), new Certainty(1.2, List.of(width), Optional.empty()));
        assertThat(sure.repeats()).containsExactly(width);
        assertThat(width.words()).isEqualTo("width of tooth 42");
    }
}
