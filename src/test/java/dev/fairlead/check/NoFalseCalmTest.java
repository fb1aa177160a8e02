package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.text.ReportText;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Courses of treatment that once looked clean and were not. */
class NoFalseCalmTest {
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());
    private static final CheckOptions BARE =
            new CheckOptions(Optional.empty(), Optional.empty(), false, Doubting.NONE, true);
    /** Three visits, target reached on one side alone, the arch cemented. */
    private static final Case GODWIT = demo("godwit-02-target-not-reached.yaml");

    private static final Case HERON = demo("heron-07-clean.yaml");

    private static Case demo(String file) {
        try {
            return CaseReader.read(Path.of("cases", file)).value().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Case with(Case c, Object... changes) {
        for (int i = 0; i < changes.length; i += 2) {
            c = changes[i + 1] == null
                    ? Edit.forget(c, (String) changes[i])
                    : Edit.set(c, (String) changes[i], changes[i + 1]);
        }
        return c;
    }

    private static Report report(Case c) {
        return CHECKER.check(c, "", BARE).report();
    }

    private static Finding finding(Case c, String id) {
        return report(c).findings().of(id);
    }

    @Test
    void harmOfLaterVisitsIsToldOfACaseLeftAtTheBench() {
        Case c = with(
                HERON,
                "/stage",
                Stage.BENCH,
                "/visits/1/date",
                HERON.visits().get(0).date().get().plusDays(9).toString(),
                "/visits/1/left/standOff",
                3.5,
                "/visits/1/newRecession",
                true,
                "/insertion/right/cutEndCaught",
                false);
        Report report = report(c);
        assertThat(report.findings().all())
                .filteredOn(f -> f.weight() == Weight.STOP)
                .extracting(Finding::id)
                .contains("cut-end-caught", "stand-off-in-range", "visit-interval", "tissue-and-root-signs");
        assertThat(report.findings().of("cut-end-caught").title()).isEqualTo("Cut-off piece not found");
        assertThat(report.subject().note()).startsWith("The case says bench;");
    }

    @Test
    void aMeasuredAdvancePastThePlanWarnsWhateverWasOpened() {
        Finding f = finding(with(HERON, "/visits/2/incisorAdvance", 6.0), "not-past-plan");
        assertThat(f.title()).isEqualTo("Advanced past the plan");
        // seen at an earlier visit, it stays seen when the last has no reading
        Case earlier = with(HERON, "/visits/1/incisorAdvance", 6.0, "/visits/2/incisorAdvance", null);
        assertThat(finding(earlier, "not-past-plan").warns()).isTrue();
        assertThat(finding(with(HERON, "/visits/2/left/space", 27.0), "not-past-plan")
                        .title())
                .isEqualTo("More space gained than the plan allows");
        assertThat(finding(with(HERON, "/visits/2/incisorAdvance", null), "not-past-plan")
                        .outcome())
                .isEqualTo(Status.NOT_ASSESSED);
    }

    @Test
    void aFoldThatIsOpenedWiderThanItsLegIsUsedUp() {
        Case c = HERON;
        for (int i = 0; i < 3; i++) {
            c = with(c, "/visits/" + i + "/left/gapOpened", 6.0);
        }
        Finding f = finding(c, "fold-wire-left");
        assertThat(f.warns()).isTrue();
        assertThat(f.seen()).contains("short of wire");
    }

    @Test
    void theCustomarySumWarnsOrWaitsAndNeverPasses() {
        Case unknownNeed = with(
                HERON,
                "/images",
                List.of(),
                "/teeth/42/width",
                null,
                "/teeth/41/width",
                null,
                "/teeth/31/width",
                null,
                "/teeth/32/width",
                null,
                "/holding/spaceLeft",
                24.0,
                "/holding/spaceRight",
                24.0);
        assertThat(finding(unknownNeed, "space-target-reached").outcome()).isEqualTo(Status.NOT_ASSESSED);
        Finding f = finding(with(unknownNeed, "/holding/spaceLeft", 20.0), "space-target-reached");
        assertThat(f.warns()).isTrue();
        assertThat(f.seen()).contains("± 0.9").contains("short of the customary 23 mm");
        // as stop where the arch is in already
        assertThat(finding(with(unknownNeed, "/holding/spaceLeft", 20.0), "target-before-holding-arch")
                        .weight())
                .isEqualTo(Weight.STOP);
    }

    @Test
    void oneSideShortDecidesWhileTheOtherIsUnknown() {
        Case c = with(GODWIT, "/holding/spaceLeft", null);
        assertThat(finding(c, "target-before-holding-arch").weight()).isEqualTo(Weight.STOP);
    }

    @Test
    void aForceThatIsTooLowGetsNoAdviceForOneThatIsTooHigh() {
        Finding low = finding(with(HERON, "/visits/2/gauge", 90), "total-force-band");
        assertThat(low.title()).isEqualTo("Force below the customary band");
        assertThat(low.todo()).doesNotContain("thinner").contains("open the folds a little more");
        Finding high = finding(with(HERON, "/visits/2/gauge", 300), "total-force-band");
        assertThat(high.title()).isEqualTo("Force above the customary band");
        assertThat(high.todo()).contains("thinner");
    }

    @Test
    void aSoftWireWithoutADeclaredProofStrengthIsNotAssessed() {
        Case c = with(HERON, "/wire/temper", "soft", "/wire/proofStrength", null);
        assertThat(finding(c, "no-permanent-set").outcome()).isEqualTo(Status.NOT_ASSESSED);
    }

    @Test
    void aStandOffOnASideThatWasNotOpenedCounts() {
        Case c = with(HERON, "/visits/1/activated", "right", "/visits/1/left/standOff", 3.5);
        assertThat(finding(c, "stand-off-in-range").weight()).isEqualTo(Weight.STOP);
    }

    @Test
    void aVisitThatOnlyLooksIsAskedForNoStandOffAndNoForce() {
        Case c = HERON;
        for (String gone :
                List.of("left/standOff", "right/standOff", "left/legsOutOfParallel", "right/legsOutOfParallel")) {
            c = with(c, "/visits/1/" + gone, null);
        }
        for (String gone : List.of("gauge", "left/gapOpened", "right/gapOpened", "frontOffLevel")) {
            c = with(c, "/visits/1/" + gone, null);
        }
        Report report = report(with(c, "/visits/1/activated", "none"));
        assertThat(List.of(
                        "stand-off-in-range",
                        "legs-parallel-after",
                        "front-level",
                        "total-force-band",
                        "no-permanent-set"))
                .allSatisfy(id -> assertThat(report.findings().of(id).missing()).isEmpty());
    }

    @Test
    void anActiveWireThatNobodyLooksAtIsTold() {
        Case c = with(
                HERON,
                "/visits/2/date",
                HERON.visits().get(1).date().get().plusWeeks(20).toString());
        assertThat(finding(c, "visit-interval").title()).isEqualTo("Child with an active wire lost from sight");
    }

    @Test
    void theSpaceOfTheFirstRecordsStandsInForNoVisit() {
        Finding f = finding(with(HERON, "/visits/0/left/space", null), "response-seen");
        assertThat(f.outcome()).isEqualTo(Status.NOT_ASSESSED);
        assertThat(f.missing()).extracting(m -> m.pointer()).contains("/visits/0/left/space");
    }

    @Test
    void oneMeasuredMisfitIsNotCompletedByAComputedOne() {
        Case c = with(HERON, "/bench/misfitRms", 0.5, "/bench/misfitWorst", null);
        assertThat(finding(c, "arch-form-fits").outcome()).isEqualTo(Status.NOT_ASSESSED);
    }

    @Test
    void doesNotApplyIsNoAnswerWhereTheHookIsUnknown() {
        Case c = with(HERON, "/insertion/left/underHook", dev.fairlead.model.Answer.NOT_APPLICABLE);
        assertThat(finding(with(c, "/hardware/left/hook", null), "stop-seated").outcome())
                .isEqualTo(Status.NOT_ASSESSED);
        assertThat(finding(with(c, "/hardware/left/hook", false), "stop-seated").outcome())
                .isEqualTo(Status.PASS);
        // without a hook nobody need say whether the fold sits under it
        assertThat(finding(with(HERON, "/hardware/left/hook", false, "/insertion/left/underHook", null), "stop-seated")
                        .outcome())
                .isEqualTo(Status.PASS);
    }

    @Test
    void aPlanThatNoVisitWouldBearWarnsBeforeTheWireGoesIn() {
        Case curlew = demo("curlew-09-fold-digs-in.yaml");
        assertThat(finding(with(curlew, "/plan/standOff", 3.5), "planned-activation-fits")
                        .weight())
                .isEqualTo(Weight.STOP);
        assertThat(finding(with(curlew, "/plan/intervalWeeks", 2), "planned-activation-fits")
                        .weight())
                .isEqualTo(Weight.STOP);
        assertThat(finding(with(curlew, "/wire/proofStrength", 300), "planned-force-fits")
                        .warns())
                .isTrue();
        assertThat(finding(with(curlew, "/plan/standOff", null), "planned-force-fits")
                        .missing())
                .extracting(m -> m.pointer())
                .containsExactly("/plan/standOff");
    }

    @Test
    void anArchThatHoldsForYearsIsTold() {
        Case c = with(HERON, "/date", "2028-12-01");
        assertThat(finding(c, "holding-arch-not-too-long").title()).isEqualTo("Holding arch in for long");
        assertThat(finding(with(c, "/holding/removed", "2027-02-01"), "holding-arch-not-too-long")
                        .outcome())
                .isEqualTo(Status.PASS);
        assertThat(finding(with(HERON, "/holding/passive", false), "holding-arch-passive")
                        .weight())
                .isEqualTo(Weight.STOP);
    }

    @Test
    void aMissingSegmentIsNotReplacedByAPerimeterThatPasses() {
        Case c = with(HERON, "/space/left", null, "/space/perimeter", 90.0);
        assertThat(finding(c, "shortage-within-reach").outcome()).isEqualTo(Status.NOT_ASSESSED);
        assertThat(finding(with(c, "/space/perimeter", 50.0), "shortage-within-reach")
                        .warns())
                .isTrue();
    }

    @Test
    void whatNobodyRecordedIsToldAsNotRecordedAndNotAsNotDone() {
        Case late = with(HERON, "/visits/2/incisorAdvance", 4.5);
        for (int i = 0; i < HERON.visits().size(); i++) {
            late = with(
                    late, "/visits/" + i + "/inclinationRechecked", false, "/visits/" + i + "/rootFilmDecided", false);
        }
        late = with(late, "/insertion/date", "2025-01-05");
        assertThat(finding(late, "inclination-rechecked").title()).isEqualTo("Inclination not checked for too long");
        assertThat(finding(late, "root-check-decided").title())
                .isEqualTo("Film of the roots neither taken nor ruled out");
        Case untold = with(late, "/visits/1/inclinationRechecked", null, "/visits/0/rootFilmDecided", null);
        assertThat(finding(untold, "inclination-rechecked").title()).isEqualTo("Check of the inclination not recorded");
        assertThat(finding(untold, "root-check-decided").title()).isEqualTo("Film of the roots: no decision recorded");
        Case held = with(HERON, "/date", "2028-12-01", "/teeth/37/state", null, "/teeth/47/state", null);
        assertThat(finding(held, "holding-arch-not-too-long").title())
                .isEqualTo("Holding arch in for long, second molars not recorded");
    }

    @Test
    void missingIsSaidOnlyOfWhatWasNotEntered() {
        Finding contradicted = finding(
                with(HERON, "/insertion/left/underHook", dev.fairlead.model.Answer.NOT_APPLICABLE), "stop-seated");
        assertThat(contradicted.seen()).contains("contradicts other facts").doesNotContain("missing");
        Finding unread =
                finding(with(HERON, "/films/panoramicRead", false, "/films/shortRoots", null), "bone-and-roots");
        assertThat(unread.seen()).contains("panoramic film not read").doesNotContain("missing");
        Finding once = finding(with(HERON, "/teeth/41/width", 5.4), "measurements-repeated");
        assertThat(once.seen()).contains("second reading of").doesNotContain("missing");
        assertThat(finding(with(HERON, "/films/shortRoots", null), "bone-and-roots")
                        .seen())
                .contains("missing: short roots");
    }

    @Test
    void warningsOfOneCauseStandUnderTheHeaviest() {
        Case steep = with(HERON, "/headFilm/incisorMandibular", 97.0);
        Report report = report(steep);
        Finding head = report.findings().all().stream()
                .filter(f -> f.warns() && f.stage() == Stage.INDICATION && f.weight() == Weight.STOP)
                .findFirst()
                .orElseThrow();
        List<String> under = report.findings().all().stream()
                .filter(f -> f.under().equals(head.id()))
                .map(Finding::id)
                .toList();
        assertThat(under).contains("incisor-inclination-before").doesNotContain(head.id());
        List<String> read =
                report.findings().forReading().stream().map(Finding::id).toList();
        int at = read.indexOf(head.id());
        assertThat(read.subList(at + 1, at + 1 + under.size())).containsExactlyInAnyOrderElementsOf(under);
        assertThat(read).doesNotHaveDuplicates().hasSameSizeAs(report.findings().all());
        String text = ReportText.of(report, ReportText.Detail.USUAL);
        assertThat(text).contains("with the above");
        assertThat(ReportJson.text(report, false)).contains("\"under\" : \"" + head.id() + "\"");
    }
}
