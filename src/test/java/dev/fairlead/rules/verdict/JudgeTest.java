package dev.fairlead.rules.verdict;

import static dev.fairlead.rules.verdict.JudgementText.result;
import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.ToothWidth;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.language.Verdict;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Judging one case: silence is completed, contradictions and failures are our own errors, threads and order do not
 * matter.
 */
class JudgeTest {
    @TempDir
    Path folder;

    private final ExampleFacts base = ProjectRules.base();

    @Test
    void aRuleThatThrowsStopsItsOwnCriterionAlone() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        Map<String, Limit> limits = new HashMap<>(rulebase.catalogue().limits().all());
        limits.remove("overjet-after.min");
        Judgement judgement = rulebase.judge(new Limits(limits)).judge(base.all());
        assertThat(judgement.errors()).singleElement().satisfies(e -> {
            assertThat(e.criterion()).isEqualTo("overjet-after");
            assertThat(e.message()).contains("no threshold is called overjet-after.min");
        });
        assertThat(result(judgement, "overjet-after").failed()).isTrue();
        assertThat(result(judgement, "overjet-after").status()).isEqualTo(Status.NOT_ASSESSED);
        assertThat(result(judgement, "hygiene-and-caries").status()).isEqualTo(Status.PASS);
        assertThat(result(judgement, "hygiene-and-caries").failed()).isFalse();
    }

    @Test
    void rulesThatContradictEachOtherAreAnError() {
        Rulebase rulebase = TestFolder.whole(folder)
                .replace(TestFolder.OVERJET + "/criterion.drl", "overjetSoFar.below(", "overjetSoFar.atLeast(")
                .load();
        Judgement judgement = rulebase.judge().judge(base.all());
        assertThat(judgement.errors())
                .extracting(Judgement.OwnError::message)
                .contains("the rules contradict each other");
        assertThat(result(judgement, "overjet-after").failed()).isTrue();
        Example example = new Example(
                rulebase.catalogue().criteria().get(0),
                "as it stands",
                Map.of(),
                Map.of("overjet-after", "not-assessed"));
        assertThat(example.differences(rulebase.judge(), base))
                .contains("overjet-after: own error: the rules contradict each other");
    }

    /** The heavier first, then as the texts name the reasons, whichever rule spoke first. */
    @Test
    void verdictsAtAPlaceStandInTheOrderOfWeightAndTexts() {
        String reversed =
                "(limits.of(\"overjet-after.min\")), overjetSoFar.atLeast(limits.of(\"overjet-after.reversed\"))";
        TestFolder both = TestFolder.whole(folder)
                .replace(TestFolder.OVERJET + "/criterion.drl", reversed, "(limits.of(\"overjet-after.min\"))");
        List<CaseFact> facts = base.with(Map.of("Bite.overjetSoFar", "-1 mm")).all();
        assertThat(reasons(both.load().judge().judge(facts))).containsExactly("reversed", "too-little");
        both.replace(TestFolder.OVERJET + "/criterion.json", "\"weight\": \"stop\"", "\"weight\": \"caution\"")
                .replace(TestFolder.OVERJET + "/criterion.drl", "verdicts.stop(", "verdicts.caution(")
                .replace(TestFolder.OVERJET + "/criterion.drl", "\"too-little\"", "\"other\"")
                .replace(TestFolder.OVERJET + "/criterion.drl", "\"reversed\"", "\"too-little\"")
                .replace(TestFolder.OVERJET + "/criterion.drl", "\"other\"", "\"reversed\"");
        assertThat(reasons(both.load().judge().judge(facts))).containsExactly("too-little", "reversed");
    }

    private static List<String> reasons(Judgement judgement) {
        return result(judgement, "overjet-after").places().get(0).verdicts().stream()
                .map(Verdict::reason)
                .toList();
    }

    @Test
    void aPassOnAnUnknownNeedIsAnError() {
        Rulebase rulebase = TestFolder.whole(folder)
                .replace(TestFolder.HYGIENE + "/criterion.drl", ", untreatedCaries.no(), activeGingivitis.no()", "")
                .load();
        Judgement judgement = rulebase.judge()
                .judge(base.with(Map.of("Mouth.untreatedCaries", "unknown")).all());
        assertThat(judgement.errors())
                .singleElement()
                .satisfies(e -> assertThat(e.message()).contains("passes it although untreatedCaries is not known"));
    }

    @Test
    void aValueInAnotherUnitThanItsLimitIsAnError() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        Judgement judgement = rulebase.judge()
                .judge(base.with(Map.of("Bite.overjetSoFar", "2 in")).all());
        assertThat(judgement.errors())
                .singleElement()
                .satisfies(e -> assertThat(e.message()).contains("INCH", "MM"));
    }

    @Test
    void whatIsMissingIsNamed() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        Judgement judgement = rulebase.judge()
                .judge(base.with(Map.of("Mouth.plaqueScore", "unknown", "Mouth.activeGingivitis", "unknown"))
                        .all());
        assertThat(result(judgement, "hygiene-and-caries").missing())
                .containsExactly("/mouth/plaqueScore", "/mouth/activeGingivitis");
        assertThat(result(rulebase.judge().judge(List.of()), "hygiene-and-caries")
                        .missing())
                .containsExactly("/mouth");
    }

    @Test
    void whatIsMissingComesBeforeWhatDoesNotApply() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        ExampleFacts both =
                base.with(Map.of("Mouth.plaqueScore", "does-not-apply", "Mouth.activeGingivitis", "unknown"));
        assertThat(result(rulebase.judge().judge(both.all()), "hygiene-and-caries")
                        .status())
                .isEqualTo(Status.NOT_ASSESSED);
        ExampleFacts one = base.with(Map.of("Mouth.plaqueScore", "does-not-apply"));
        assertThat(result(rulebase.judge().judge(one.all()), "hygiene-and-caries")
                        .status())
                .isEqualTo(Status.DOES_NOT_APPLY);
    }

    @Test
    void stagesThatTheCaseHasNotReachedAreLeftOut() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        assertThat(rulebase.judge().judge(base.all(), Stage.RECORDS).results()).isEmpty();
        assertThat(rulebase.judge().judge(base.all(), Stage.INDICATION).results())
                .hasSize(2);
    }

    @Test
    void manyThreadsShareAJudge() {
        Judge judge = TestFolder.whole(folder).load().judge();
        List<CaseFact> good = base.all();
        List<CaseFact> poor = base.with(Map.of("Mouth.untreatedCaries", "yes")).all();
        List<Status> found = IntStream.range(0, 2000)
                .parallel()
                .mapToObj(i -> result(judge.judge(i % 2 == 0 ? good : poor), "hygiene-and-caries")
                        .status())
                .toList();
        assertThat(IntStream.range(0, 2000)).allMatch(i -> found.get(i) == (i % 2 == 0 ? Status.PASS : Status.WARN));
    }

    @Test
    void placesComeInTheOrderOfTheirNumbers() {
        List<String> pointers =
                List.of("/visits/10/left", "/visits/2/left", "/visits/2", "/visits/9/right", "/visits/10");
        assertThat(pointers.stream()
                        .map(p -> (CaseFact) new ToothWidth(
                                new Place(p, ""),
                                Tooth.of(41),
                                Measured.exact(5, Unit.MM),
                                Measured.exact(5, Unit.MM),
                                Measured.exact(0, Unit.RATIO)))
                        .sorted(java.util.Comparator.comparing(CaseFact::place))
                        .map(f -> f.place().pointer()))
                .containsExactly("/visits/2", "/visits/2/left", "/visits/9/right", "/visits/10", "/visits/10/left");
    }
}
