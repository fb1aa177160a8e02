package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.Bite;
import dev.fairlead.facts.BiteBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Mouth;
import dev.fairlead.facts.MouthBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.VisitSeen;
import dev.fairlead.facts.VisitSeenBuilder;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** From endings made by hand to findings: which reason leads, what is told of none, what is told once. */
class FindingMakerTest {
    private static final Catalogue CATALOGUE = ProjectRules.rulebase().catalogue();
    private static final FindingMaker MAKER = new FindingMaker(CATALOGUE, Missing::of);
    private static final Bite BITE = fact(Bite.class);

    private static <F> F fact(Class<F> type) {
        return ProjectRules.base().all().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Finding finding(String criterion, Ending ending, PlaceResult... places) {
        return MAKER.finding(new CriterionResult(CATALOGUE.criterion(criterion), ending, List.of(places)));
    }

    private static PlaceResult place(String words, CaseFact fact, Ending ending, Verdict... verdicts) {
        return new PlaceResult(new Place("/" + words, words), fact, ending, List.of(verdicts), List.of());
    }

    /** The first reason of that weight, of a criterion that warns in one place; a pass where none is given. */
    private static Finding ended(String criterion, Ending ending) {
        Criterion c = CATALOGUE.criterion(criterion);
        if (ending == Ending.PASS) {
            return finding(criterion, Ending.PASS);
        }
        String reason = c.reasons().entrySet().stream()
                .filter(r -> r.getValue().stop() == (ending == Ending.STOP))
                .findFirst()
                .orElseThrow()
                .getKey();
        Bite below = BiteBuilder.builder(BITE)
                .overjetAfter(Measured.exact(-0.4, Unit.MM))
                .build();
        Verdict v = new Verdict(criterion, below, ending, reason);
        v.seen(c.limits().get(0), below.overjetAfter());
        return finding(criterion, ending, place("", null, ending, v));
    }

    @Test
    void theHeaviestReasonGivesTheTitleAndIsAnsweredFirst() {
        Verdict little = new Verdict("overjet-after", BITE, Ending.CAUTION, "too-little")
                .seen("overjet-after.min", Measured.exact(0.5, Unit.MM));
        Verdict reversed = new Verdict("overjet-after", BITE, Ending.STOP, "reversed")
                .seen("overjet-after.reversed", Measured.exact(-1, Unit.MM));
        Finding both = finding(
                "overjet-after",
                Ending.STOP,
                place("now", BITE, Ending.CAUTION, little),
                place("later", BITE, Ending.STOP, reversed));
        assertThat(both.title()).isEqualTo("Reverse overjet predicted");
        assertThat(both.weight()).isEqualTo(Weight.STOP);
        assertThat(both.places()).extracting(PlaceFinding::weight).containsExactly(Weight.CAUTION, Weight.STOP);
        assertThat(both.todo())
                .startsWith("Do not start with this plan.")
                .endsWith("on the models in centric relation.");
        assertThat(both.seen())
                .isEqualTo("Now: an overjet of 0.5 mm is predicted; an overjet of at least 1.0 mm is asked for."
                        + " Later: a reverse overjet of 1.0 mm is predicted.");
    }

    @Test
    void whatIsNotAssessedSaysWhetherToEnterSomethingOrToReportAnError() {
        Criterion c = CATALOGUE.criterion("overjet-after");
        PlaceResult waits =
                new PlaceResult(new Place("/bite", ""), BITE, Ending.NOT_ASSESSED, List.of(), List.of("/bite/overjet"));
        Finding missing = finding("overjet-after", Ending.NOT_ASSESSED, waits);
        assertThat(missing.title()).isEqualTo(c.title());
        assertThat(missing.seen()).isEqualTo("Not assessed, missing: overjet, bite.");
        assertThat(missing.todo()).startsWith("Enter what is missing.");
        Finding failed = MAKER.finding(new CriterionResult(c, Ending.FAILED, List.of(waits)));
        assertThat(failed.seen()).contains("an error of the program");
        assertThat(failed.todo()).startsWith("Do not rely on this check");
        assertThat(finding("overjet-after", Ending.PASS).todo()).isEmpty();
    }

    @Test
    void whatDoesNotApplyNamesTheFactThatTheCaseSaysItOf() {
        Bite none =
                BiteBuilder.builder(BITE).overjetSoFar(Measured.notApplicable()).build();
        VisitSeen first = VisitSeenBuilder.builder(fact(VisitSeen.class))
                .weeksSince(Measured.notApplicable())
                .build();
        Ending status = Ending.DOES_NOT_APPLY;
        assertThat(finding("overjet-after", status, place("", none, status)).seen())
                .isEqualTo("Overjet so far does not apply.");
        assertThat(finding("visit-interval", status, place("visit 1", first, status))
                        .seen())
                .isEqualTo("Visit 1: no earlier activation.");
        assertThat(finding("overjet-after", status, place("", null, status)).seen())
                .isEqualTo("Does not apply.");
    }

    @Test
    void onlyMeasurementsOfTheCaseAreNamedAsWhatANumberRestsOn() {
        Bite bite = BiteBuilder.builder(BITE)
                .overjetAfter(Measured.of(2, Unit.MM, "/bite/overjet", 0.3)
                        .plus(Measured.of(1, Unit.MM, "spread of the equation", 0.1)))
                .overjetSoFar(Measured.of(2, Unit.MM, "/bite/overjet", 0.3))
                .build();
        Finding f = finding("overjet-after", Ending.PASS, place("", bite, Ending.PASS));
        assertThat(f.usedFields()).containsExactly("/bite/overjet");
        Finding same = finding("overjet-after", Ending.PASS, place("", bite, Ending.PASS));
        Finding other = finding("overjet-after", Ending.PASS, place("", BITE, Ending.PASS));
        assertThat(same).isEqualTo(f).hasSameHashCodeAs(f);
        assertThat(BITE.overjetAfter().sources())
                .isNotEqualTo(bite.overjetAfter().sources());
        assertThat(f.traces()).isNotEqualTo(other.traces());
        assertThat(finding("overjet-after", Ending.PASS).traces().hashCode())
                .isNotEqualTo(f.traces().hashCode());
    }

    @Test
    void aComponentThatIsNoNumberReadsAsItsWord() {
        Mouth habit = MouthBuilder.builder(fact(Mouth.class)).habit(Answer.YES).build();
        Verdict pass = new Verdict("habits-seen", habit, Ending.PASS, "");
        assertThat(finding("habits-seen", Ending.PASS, place("", habit, Ending.PASS, pass))
                        .seen())
                .isEqualTo("Habits were looked for; one is there: yes.");
    }

    /** In the order of the rulebase: inclination before, after, relative to divergence. */
    @Test
    void ofOneCauseTheHeaviestWarningLeadsAndTheFirstOfEquals() {
        List<String> ids = CATALOGUE.causes().get("inclination of the incisors");
        assertThat(under(ids, Ending.CAUTION, Ending.STOP, Ending.CAUTION)).containsExactly(ids.get(1), "", ids.get(1));
        assertThat(under(ids, Ending.STOP, Ending.STOP, Ending.PASS)).containsExactly("", ids.get(0), "");
        assertThat(under(ids, Ending.PASS, Ending.CAUTION, Ending.CAUTION)).containsExactly("", "", ids.get(1));
        assertThat(under(ids, Ending.PASS, Ending.PASS, Ending.PASS)).containsExactly("", "", "");
    }

    private static List<String> under(List<String> ids, Ending... outcomes) {
        List<Finding> all = IntStream.range(0, outcomes.length)
                .mapToObj(i -> ended(ids.get(i), outcomes[i]))
                .toList();
        return SharedCauses.told(all, CATALOGUE).stream().map(Finding::under).toList();
    }

    @Test
    void whatIsToldUnderAnotherStandsRightBehindIt() {
        List<String> ids = CATALOGUE.causes().get("inclination of the incisors");
        Finding lone = ended("overjet-after", Ending.CAUTION);
        List<Finding> told = SharedCauses.told(
                List.of(lone, ended(ids.get(0), Ending.CAUTION), ended(ids.get(1), Ending.STOP)), CATALOGUE);
        Findings findings = new Findings(told, List.of());
        assertThat(findings.forReading())
                .extracting(Finding::id)
                .containsExactly(ids.get(1), ids.get(0), "overjet-after");
        assertThat(findings.lead(told.get(1))).isSameAs(told.get(2));
        assertThat(findings.lead(lone)).isSameAs(lone);
    }
}
