package dev.fairlead.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick judge says what the engine says. */
class QuickJudgeTest {
    private static final Rulebase RULES = Rulebase.fromFolder(Path.of("rules"));

    private static List<CaseFact> facts(Case c) {
        return Measures.of(c, Optional.empty(), Workbook.none()).facts();
    }

    private static void same(QuickJudge quick, Judge engine, List<CaseFact> facts, Stage reached) {
        Ending[] endings = quick.endings(facts, reached);
        Judgement judged = engine.judge(facts, reached);
        List<Ending> expected = new ArrayList<>();
        for (String id : quick.criteria()) {
            expected.add(judged.results().stream()
                    .filter(r -> r.criterion().id().equals(id))
                    .findFirst()
                    .map(Ending::of)
                    .orElse(null));
        }
        assertThat(endings).containsExactlyElementsOf(expected);
    }

    /**
     * Cases from which facts are taken at random and in which numbers are pulled about: also at the second look, from
     * what was kept.
     */
    @Test
    void saysWhatTheEngineSays() {
        Random random = new Random(20261125);
        QuickJudge quick = RULES.quickJudge();
        Judge engine = RULES.judge();
        for (int n = 0; n < 120; n++) {
            CaseBuilder b = SampleCase.full();
            b.values().forEach((at, v) -> {
                double chance = random.nextDouble();
                if (chance < 0.05) {
                    b.without(at);
                } else if (chance < 0.25 && v instanceof Double d && d > 0) {
                    b.set(at, d * (0.6 + 0.8 * random.nextDouble()));
                } else if (chance < 0.15 && v instanceof Boolean yes) {
                    b.set(at, !yes);
                }
            });
            List<CaseFact> facts = facts(b.build());
            same(quick, engine, facts, Stage.HOLDING);
            same(quick, engine, facts, Stage.BENCH);
        }
    }

    /** One number of one fact at a time pulled far away. */
    @Test
    void saysWhatBecomesOfACriterionWhenOneNumberIsAnother() {
        QuickJudge quick = RULES.quickJudge();
        List<CaseFact> facts = facts(SampleCase.full().build());
        QuickJudge.Around around = quick.around(facts);
        assertThat(around.endings(Stage.HOLDING)).containsExactly(quick.endings(facts, Stage.HOLDING));
        for (int i = 0; i < quick.criteria().size(); i++) {
            for (Term t : RULES.terms(quick.criteria().get(i))) {
                if (t.kind().compares() && around.value(i, 0, t.need()) instanceof Measured m && m.known()) {
                    CaseFact one = around.about(i).get(0);
                    Ending asked =
                            around.asked(i, one, FactEdit.with(one, t.need().component(), m.plus(50)), Stage.HOLDING);
                    assertThat(around.ending(i, 0, t.need(), m.plus(50)))
                            .as(quick.criteria().get(i) + " " + t.need())
                            .isEqualTo(asked);
                }
            }
        }
    }

    @Test
    void otherThresholdsOtherEndings() {
        List<CaseFact> facts = facts(SampleCase.full().build());
        Rulebase strict = RULES.withThreshold("incisor-inclination-after.caution", 91);
        same(strict.quickJudge(), strict.judge(), facts, Stage.HOLDING);
    }

    @Test
    void readsTheConditionsOfARule() {
        assertThat(RULES.terms("stand-off-in-range"))
                .extracting(t -> t.need().component() + " " + t.kind() + " " + t.limit())
                .containsExactly(
                        "standOff AT_LEAST stand-off-in-range.least",
                        "standOff AT_MOST stand-off-in-range.most",
                        "standOff BELOW stand-off-in-range.least",
                        "standOff ABOVE stand-off-in-range.most",
                        "standOff AT_MOST stand-off-in-range.stop",
                        "standOff ABOVE stand-off-in-range.stop");
        assertThat(RULES.catalogue().criteria())
                .allMatch(c -> RULES.terms(c.id()).size() >= 2);
    }
}
