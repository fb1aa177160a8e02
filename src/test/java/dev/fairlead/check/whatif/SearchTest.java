package dev.fairlead.check.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Findings;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the search suggests is done to the case and checked in the ordinary way; a step less is checked as well. */
class SearchTest {
    private static final Rulebase RULES = Rulebase.load(Path.of("rules"));
    private static final Search SEARCH = new Search(RULES, Calculations.plain());
    private static final Checker CHECKER = new Checker(RULES, Calculations.plain());
    private static final CheckOptions BARE = CheckOptions.USUAL.withoutWorkings();

    private static CaseBuilder at(Stage stage) {
        return SampleCase.until(stage);
    }

    private static WhatIf search(CaseBuilder b) {
        return SEARCH.of(b.build(), "0", BARE);
    }

    private static Remedy outlook(WhatIf w, String criterion) {
        return w.outlooks().stream()
                .filter(o -> o.finding().id().equals(criterion))
                .findFirst()
                .orElseThrow(() -> new AssertionError(criterion));
    }

    private static Findings check(Case c) {
        return CHECKER.check(c, "0", BARE).report().findings();
    }

    /**
     * Clears it, makes nothing worse that is not named, touches no fact of the patient; with any one change a step less
     * it does not do.
     */
    private static void holds(Case c, String criterion, Suggestion s) {
        Findings before = check(c);
        Findings after = check(s.in(c));
        assertThat(before.of(criterion).warns()).isTrue();
        assertThat(after.of(criterion).outcome()).as(criterion).isIn(Status.PASS, Status.DOES_NOT_APPLY);
        assertThat(worse(before, after)).as(criterion).isEqualTo(s.worsens());
        assertThat(s.clears())
                .contains(criterion)
                .allMatch(id -> before.of(id).warns() && !after.of(id).warns());
        assertThat(s.changes())
                .allMatch(x -> x.pointer()
                        .matches("/(plan|wire|bench|visits/\\d+/(left|right)|visits/\\d+/date|holding)(/.*)?"));
        for (Setting less : stepLess(c, s)) {
            Findings f = check(less.in(c));
            assertThat(f.of(criterion).warns() || !worse(before, f).isEmpty() || nearer(before, f))
                    .as(criterion + " with " + less.changes())
                    .isTrue();
        }
    }

    /** A pass comes within the error of its limit, from which a suggestion keeps away where it can. */
    private static boolean nearer(Findings before, Findings after) {
        return after.all().stream()
                .anyMatch(f -> f.outcome() == Status.PASS
                        && f.close()
                        && !(before.of(f.id()).outcome() == Status.PASS
                                && before.of(f.id()).close()));
    }

    private static List<String> worse(Findings before, Findings after) {
        return before.all().stream()
                .filter(f -> {
                    int was = rank(f);
                    return rank(after.of(f.id())) > was;
                })
                .map(f -> f.id())
                .toList();
    }

    /** Does not apply, pass, not assessed, caution, stop. */
    private static int rank(dev.fairlead.findings.Finding f) {
        return switch (f.outcome()) {
            case DOES_NOT_APPLY -> 0;
            case PASS -> 1;
            case NOT_ASSESSED -> 2;
            case WARN -> f.weight() == dev.fairlead.findings.Weight.STOP ? 4 : 3;
        };
    }

    /**
     * All settings of the same variables in the same direction with one step less; the present setting where there was
     * one step.
     */
    private static List<Setting> stepLess(Case c, Suggestion s) {
        return s.changes().stream()
                .filter(x -> x.value() instanceof Double)
                .map(x -> {
                    double now = Variable.value(c, x.pointer());
                    double to = (double) x.value();
                    double step =
                            x.pointer().endsWith("Radius") ? 0.1 : x.pointer().matches(".*(outOf|legsOut).*") ? 1 : 0.5;
                    boolean together = s.changes().size() == 2 && x.pointer().startsWith("/plan/advance");
                    List<Change> less = s.changes().stream()
                            .map(y -> y.equals(x) || (together && y.value() instanceof Double)
                                    ? Change.of(c, y.pointer(), (double) y.value() - Math.signum(to - now) * step)
                                    : y)
                            .toList();
                    return new Setting(1, less);
                })
                .toList();
    }

    /** 4.2 mm of overjet, 1 mm asked for: 3 mm of advance leave it, in steps of half a millimetre. */
    @Test
    void overjetIsKeptByLessAdvance() {
        CaseBuilder b = at(Stage.INDICATION)
                .set("/bite/overjet", 4.2)
                .set("/plan/advanceLeft", 4)
                .set("/plan/advanceRight", 4);
        Suggestion s = outlook(search(b), "overjet-after").single().orElseThrow();
        assertThat(s.changes()).extracting(Change::pointer).containsExactly("/plan/advanceLeft", "/plan/advanceRight");
        assertThat(s.changes()).extracting(Change::value).containsExactly(3.0, 3.0);
        assertThat(s.steps()).isEqualTo(2);
        holds(b.build(), "overjet-after", s);
        // what each side then gets beyond its need is told
        assertThat(s.spare()).allMatch(m -> m.known() && m.value() > 0);
    }

    /** A plan that only moves the fault elsewhere is none: with 0.5 mm of advance both sides would fall short. */
    @Test
    void noPlanIsOfferedThatTreatsTooLittle() {
        CaseBuilder b = at(Stage.INDICATION)
                .set("/bite/overjet", 1.5)
                .set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 2);
        assertThat(outlook(search(b), "overjet-after").best()).isEmpty();
    }

    /** What comes of bending is no lever: nobody sets an angle that was measured. */
    @Test
    void aFoldThatIsOutOfSquareIsCorrectedAndMeasuredAgain() {
        CaseBuilder b = at(Stage.BENCH).set("/bench/left/outOfSquare", 9);
        Remedy o = outlook(search(b), "bends-square");
        assertThat(o.best()).isEmpty();
        assertThat(o.redone()).isTrue();
    }

    /** 6 mm of fold tipped by 10 degrees moves 6 sin 10° = 1.0 mm off the gingiva. */
    @Test
    void aFoldComesOffTheGingivaByItsTip() {
        CaseBuilder b = at(Stage.BENCH)
                .set("/bench/right/clearGingiva", 0.3)
                .set("/bench/right/height", 6)
                .set("/bench/right/buccalTip", 0)
                .set("/bench/right/clearCheek", 5);
        Suggestion s = outlook(search(b), "exit-clears-gingiva").best().orElseThrow();
        assertThat(s.changes()).extracting(Change::pointer).containsExactly("/bench/right/buccalTip");
        assertThat(s.follows()).extracting(Change::pointer).contains("/bench/right/clearGingiva");
        double tip = Math.toRadians((double) s.changes().get(0).value());
        assertThat((double) s.follows().get(0).value())
                .isEqualTo(0.3 + 6 * Math.sin(tip), org.assertj.core.api.Assertions.within(0.051));
        holds(b.build(), "exit-clears-gingiva", s);
    }

    @Test
    void whatAPlanCostsStandsBesideIt() {
        Suggestion s = outlook(
                        search(at(Stage.INDICATION)
                                .set("/bite/overjet", 4.2)
                                .set("/plan/advanceLeft", 4)
                                .set("/plan/advanceRight", 4)),
                        "overjet-after")
                .single()
                .orElseThrow();
        assertThat(s.costs())
                .extracting(Difference.NumberChange::id)
                .contains(
                        "position.spare.left",
                        "position.spare.right",
                        "position.overjet-after",
                        "position.inclination-after");
    }

    /** 0.022 in of wire in a slot of 0.022 in: the next size down that leaves 0.001 in is 0.020 in. */
    @Test
    void aThinnerWireFitsTheSlot() {
        CaseBuilder b = at(Stage.READINESS).set("/wire/size", 0.559).set("/wire/plannedSize", 0.559);
        Suggestion s = outlook(search(b), "slot-takes-wire").best().orElseThrow();
        assertThat(s.changes()).anySatisfy(x -> {
            assertThat(x.pointer()).isEqualTo("/wire/size");
            assertThat((double) x.value()).isEqualTo(0.508);
            assertThat(x.to()).isEqualTo("0.508 mm (0.020 in)");
        });
        Findings after = check(s.in(b.build()));
        assertThat(after.of("slot-takes-wire").outcome()).isEqualTo(Status.PASS);
    }

    /** The day of judging is that of the visit: it can still be put off, by whole weeks, until four have gone by. */
    @Test
    void aVisitThatIsTooEarlyIsPutOff() {
        CaseBuilder b = at(Stage.ACTIVATION).set("/visits/2/date", "2026-03-14").set("/date", "2026-03-14");
        Suggestion s = outlook(search(b), "visit-interval").single().orElseThrow();
        // 24 February + 28 days = 24 March; 14 March + 2 weeks = 28 March
        assertThat(s.changes()).extracting(Change::value).containsExactly("2026-03-28");
        holds(b.build(), "visit-interval", s);
        // a visit that is done stays as it was
        CaseBuilder done = b.copy().set("/date", "2026-03-20");
        assertThat(outlook(search(done), "visit-interval").best()).isEmpty();
    }

    @Test
    void everySuggestionOfAMixedCaseHolds() {
        CaseBuilder b = at(Stage.BENCH)
                .set("/bite/overjet", 2)
                .set("/bench/right/clearGingiva", 0.3)
                .set("/bench/left/legsOutOfParallel", 8)
                .set("/headFilm/incisorMandibular", 92)
                .set("/plan/advanceLeft", 3)
                .set("/plan/advanceRight", 2.5);
        WhatIf w = search(b);
        assertThat(w.outlooks()).hasSizeGreaterThan(2);
        Case c = b.build();
        for (Remedy o : w.outlooks()) {
            o.best().ifPresent(s -> holds(c, o.finding().id(), s));
            o.single()
                    .ifPresent(
                            s -> assertThat(check(s.in(c)).of(o.finding().id()).warns())
                                    .isFalse());
        }
        Suggestion all = w.together().orElseThrow();
        Findings after = check(all.in(c));
        assertThat(after.all()).noneMatch(f -> f.warns() && all.clears().contains(f.id()));
        assertThat(worse(check(c), after)).isEmpty();
    }

    @Test
    void whatNoPlanClearsIsSaidWithItsReason() {
        Remedy o = outlook(
                search(at(Stage.INDICATION).set("/headFilm/incisorMandibular", 103)), "incisor-inclination-before");
        assertThat(o.best()).isEmpty();
        assertThat(o.searched()).isTrue();
        assertThat(o.rests()).containsExactly("lower incisor to mandibular plane, lateral cephalogram");
    }

    @Test
    void aPlanThatMovesNothingIsNoPlan() {
        WhatIf w = search(at(Stage.INDICATION).set("/bite/overjet", 1));
        assertThat(outlook(w, "overjet-after").best()).isEmpty();
    }

    @Test
    void theSameCaseGivesTheSameAnswer() {
        CaseBuilder b = at(Stage.BENCH)
                .set("/bench/left/outOfSquare", 8)
                .set("/bench/right/outOfSquare", 7)
                .set("/bite/overjet", 2);
        assertThat(search(b).outlooks())
                .isEqualTo(new Search(RULES, Calculations.plain())
                        .of(b.build(), "0", BARE)
                        .outlooks());
    }

    @Test
    void aCaseWithoutWarningsAsksForNothing() {
        WhatIf w = SEARCH.of(at(Stage.RECORDS).build(), "0", BARE.at(Stage.RECORDS));
        assertThat(w.outlooks()).isEmpty();
        assertThat(w.tried()).isZero();
    }
}
