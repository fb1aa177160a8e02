package dev.fairlead.check.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Findings;
import dev.fairlead.findings.Weight;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Nothing smaller than what is suggested would do: every setting of every lever, and every two of them, with fewer
 * steps is tried by brute force and checked in the ordinary way at every stage.
 */
class SmallestTest {
    private static final Rulebase RULES = Rulebase.load(Path.of("rules"));
    private static final Search SEARCH = new Search(RULES, Calculations.plain());
    private static final Checker CHECKER = new Checker(RULES, Calculations.plain());
    private static final CheckOptions BARE = CheckOptions.USUAL.withoutWorkings();

    private static CaseBuilder at(Stage stage) {
        return SampleCase.until(stage);
    }

    static List<Arguments> warnings() {
        return List.of(
                Arguments.of(
                        "overjet-after",
                        at(Stage.INDICATION)
                                .set("/bite/overjet", 4.2)
                                .set("/plan/advanceLeft", 4)
                                .set("/plan/advanceRight", 4)),
                // the plan goes beyond the need, so that a smaller one is there to be found
                Arguments.of(
                        "incisor-inclination-after",
                        at(Stage.INDICATION)
                                .set("/headFilm/incisorMandibular", 88)
                                .set("/headFilm/incisorToAPog", -2)
                                .set("/bite/overjet", 7)
                                .set("/plan/advanceLeft", 3.5)
                                .set("/plan/advanceRight", 3)),
                Arguments.of(
                        "tube-takes-wire",
                        at(Stage.READINESS)
                                .set("/hardware/left/height", 0.559)
                                .set("/hardware/right/height", 0.559)
                                .set("/wire/size", 0.559)
                                .set("/wire/plannedSize", 0.559)),
                Arguments.of(
                        "plan-meets-need",
                        at(Stage.INDICATION).set("/plan/advanceLeft", 4).set("/plan/advanceRight", 4)),
                Arguments.of("planned-activation-fits", at(Stage.BENCH).set("/plan/standOff", 2.6)),
                Arguments.of(
                        "exit-clears-gingiva",
                        at(Stage.BENCH).set("/bench/right/clearGingiva", 0.3).set("/bench/right/buccalTip", 2)),
                Arguments.of(
                        "slot-takes-wire",
                        at(Stage.READINESS).set("/wire/size", 0.559).set("/wire/plannedSize", 0.559)),
                Arguments.of(
                        "visit-interval",
                        at(Stage.ACTIVATION).set("/visits/2/date", "2026-03-14").set("/date", "2026-03-14")));
    }

    @ParameterizedTest
    @MethodSource("warnings")
    void nothingSmallerClearsItWithoutHarm(String criterion, CaseBuilder b) {
        Case c = b.build();
        Suggestion s = SEARCH.of(c, "0", BARE).outlooks().stream()
                .filter(o -> o.finding().id().equals(criterion))
                .findFirst()
                .orElseThrow()
                .best()
                .orElseThrow();
        Findings before = everywhere(c);
        // where nothing keeps away from every other limit, the smallest that makes nothing worse is suggested
        boolean near = !s.near().isEmpty();
        assertThat(does(criterion, before, everywhere(s.in(c)), s.in(c), near)).isTrue();
        List<Variable> levers =
                PlanVariables.of(c, BARE.reach(c).day(), BARE.reach(c).judged());
        int tried = 0;
        for (List<Setting> fewer : smaller(levers, s.steps())) {
            Case other = c;
            for (Setting setting : fewer) {
                other = setting.in(other);
            }
            tried++;
            assertThat(does(criterion, before, everywhere(other), other, near))
                    .as("%s instead of %s", fewer, s.changes())
                    .isFalse();
        }
        assertThat(tried).isGreaterThanOrEqualTo(s.steps() > 1 ? 10 : 0);
    }

    /** Single settings and pairs of different levers that take fewer steps. */
    private static List<List<Setting>> smaller(List<Variable> levers, int steps) {
        List<List<Setting>> all = new ArrayList<>();
        for (int i = 0; i < levers.size(); i++) {
            for (Setting one : levers.get(i).settings()) {
                if (one.steps() < steps) {
                    all.add(List.of(one));
                }
                for (int j = i + 1; j < levers.size(); j++) {
                    for (Setting other : levers.get(j).settings()) {
                        if (one.steps() + other.steps() < steps && !one.touches(other)) {
                            all.add(List.of(one, other));
                        }
                    }
                }
            }
        }
        return all;
    }

    private static Findings everywhere(Case c) {
        return CHECKER.check(c, "0", BARE.at(Stage.HOLDING)).report().findings();
    }

    /** It clears the warning, makes nothing worse and brings no other pass within the error of its limit. */
    private static boolean does(String criterion, Findings before, Findings after, Case other, boolean near) {
        boolean moves =
                other.plan().advanceLeft().max(other.plan().advanceRight()).value() > 0;
        if (!moves || after.of(criterion).warns() || after.of(criterion).outcome() == Status.NOT_ASSESSED) {
            return false;
        }
        for (Finding f : after.all()) {
            Finding was = before.of(f.id());
            boolean nearer =
                    !near && f.outcome() == Status.PASS && f.close() && !(was.outcome() == Status.PASS && was.close());
            boolean spreads = f.warns() && rank(f) == rank(was) && !warned(was).containsAll(warned(f));
            if (rank(f) > rank(was) || nearer || spreads) {
                return false;
            }
        }
        return true;
    }

    /** Places with what is said of them but for the numbers: a fault of another kind is another fault. */
    private static List<String> warned(Finding f) {
        return f.places().stream()
                .filter(p -> p.outcome() == Status.WARN)
                .map(p -> p.pointer() + p.words() + p.text().replaceAll("[^a-z]", ""))
                .toList();
    }

    private static int rank(Finding f) {
        return switch (f.outcome()) {
            case DOES_NOT_APPLY -> 0;
            case PASS -> 1;
            case NOT_ASSESSED -> 2;
            case WARN -> f.weight() == Weight.STOP ? 4 : 3;
        };
    }
}
