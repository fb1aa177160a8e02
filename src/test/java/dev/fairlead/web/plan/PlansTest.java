package dev.fairlead.web.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.whatif.Search;
import dev.fairlead.check.whatif.WhatIf;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.verdict.Rulebase;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.page.Checks;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/**
 * Searches beside the pages: the same answer as the search itself, without waiting for it, and never without an end.
 */
class PlansTest {
    private static final Rulebase RULES = Rulebase.load(null);
    private static final Checks CHECKS = Checks.by(new Checker(RULES));
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 1);
    private static final Duration LONG = Duration.ofSeconds(60);

    private static Opened at(Stage stage, String... typed) {
        CaseTree tree = CaseTree.of(SampleCase.until(stage).build());
        tree.set("/stage", stage.word());
        for (int i = 0; i < typed.length; i += 2) {
            tree.set(typed[i], typed[i + 1]);
        }
        return Opened.of("a.json", tree.text(CaseFormat.JSON).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theAnswerIsThatOfTheSearchWithNumbersBeforeAndAfter() {
        Opened opened =
                at(Stage.INDICATION, "/bite/overjet", "4.2", "/plan/advanceLeft", "4", "/plan/advanceRight", "4");
        PlanSearch answer = new Plans(CHECKS::checker, () -> TODAY).of(opened, LONG);
        assertThat(answer.state()).isEqualTo(PlanSearch.State.DONE);
        WhatIf same = new Search(RULES, Calculations.full())
                .of(
                        opened.reading().value().orElseThrow(),
                        opened.file().version(),
                        CheckOptions.USUAL.with(Doubting.NONE));
        assertThat(answer.found().orElseThrow().tried()).isEqualTo(same.tried());
        assertThat(answer.warnings())
                .extracting(PlanSearch.Warning::outlook)
                .usingRecursiveComparison()
                .isEqualTo(same.outlooks());
        PlanOffer offer =
                answer.about("overjet-after").warnings().get(0).offers().get(0);
        // 4.2 mm of overjet, 1 mm asked for: 3 mm of advance leave it, in steps of half a millimetre
        assertThat(offer.typed())
                .containsEntry("/plan/advanceLeft", "3")
                .containsEntry("/plan/advanceRight", "3")
                .hasSize(2);
        assertThat(offer.difference().findings()).anySatisfy(f -> {
            assertThat(f.after().id()).isEqualTo("overjet-after");
            assertThat(f.before().warns() && !f.after().warns()).isTrue();
        });
        assertThat(offer.difference().numbers()).isNotEmpty();
        assertThat(answer.about("no-such").warnings()).isEmpty();
    }

    @Test
    void aPageIsNotKeptWaitingAndALongSearchIsEnded() {
        Opened opened = at(Stage.INDICATION, "/bite/overjet", "1.5");
        Plans plans = new Plans(CHECKS::checker, () -> TODAY, 0);
        assertThat(plans.of(opened, LONG).state()).as("no time at all").isEqualTo(PlanSearch.State.ENDED);
        assertThat(new Plans(CHECKS::checker, () -> TODAY)
                        .of(opened, Duration.ZERO)
                        .state())
                .isEqualTo(PlanSearch.State.SEARCHING);
    }

    @Test
    void aSearchForAnEarlierVersionGivesWayToThePresentOne() {
        Plans plans = new Plans(CHECKS::checker, () -> TODAY);
        Opened old = at(Stage.ACTIVATION, "/plan/standOff", "3");
        Opened present = at(Stage.INDICATION, "/bite/overjet", "1.5");
        assertThat(plans.of(old, Duration.ZERO).searching()).isTrue();
        assertThat(plans.of(present, LONG).state()).isEqualTo(PlanSearch.State.DONE);
        assertThat(plans.of(old, LONG).state())
                .as("asked for again it is searched again")
                .isEqualTo(PlanSearch.State.DONE);
    }
}
