package dev.fairlead.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.Bite;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FirstMolar;
import dev.fairlead.facts.InsertedEnd;
import dev.fairlead.facts.Progress;
import dev.fairlead.facts.Wire;
import dev.fairlead.measure.working.Workbook;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a case says in one place holds against what it says in another, so that neither can make a pass alone. */
class ContradictionsTest {
    private static <T extends CaseFact> T first(CaseBuilder b, Class<T> kind) {
        return Measures.of(b.build(), Optional.empty(), Workbook.none()).facts().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Opening one fold alone turns a stiff front about the other tube, away from the opened side: rigid-body geometry.
     */
    @ParameterizedTest
    @CsvSource({
        // half the difference of the gains: 0.866 x 2 mm / 2 = 0.866 mm, towards the side that gains less
        "2, 3, 1, left, 1.134, no, yes",
        "2, 1, 3, right, 2.866, yes, yes",
        "-2, 1, 3, right, 1.134, no, yes",
        "-2, 1, 3, left, 1.134, no, no",
        "2, 2, 2, both, 2, no, yes",
        "2, 2, 2, none, 2, no, yes",
        "2, 3, 1, both, 1.134, no, no",
        "2, 3, 1, none, 1.134, no, no",
        "2, 1e-9, 0, both, 2, no, yes",
        "2, 0, 1e-9, right, 2, no, no",
        "2, 2, 2, left, 2, no, no"
    })
    void thePlannedAmountsTurnTheFrontAwayFromTheSideThatGainsMore(
            double midline, double left, double right, String more, double after, String carriesOff, String agrees) {
        CaseBuilder b = SampleCase.full()
                .set("/bite/lowerMidline", midline)
                .set("/plan/advanceLeft", left)
                .set("/plan/advanceRight", right)
                .set("/plan/moreOn", more);
        Bite bite = first(b, Bite.class);
        assertThat(bite.midlineAfter().value()).isCloseTo(after, within(1e-3));
        assertThat(bite.carriesOff()).hasToString(carriesOff);
        assertThat(bite.wordAgrees()).hasToString(agrees);
        assertThat(bite.amountsDiffer()).hasToString(Math.abs(left - right) > 0.1 ? "yes" : "no");
        assertThat(first(b.without("/bite/lowerMidline"), Bite.class)
                        .midlineAfter()
                        .missing())
                .containsExactly("/bite/lowerMidline");
    }

    @Test
    void whatThePlannedAmountsAreHeldAgainstIsNamed() {
        Bite noWord = first(SampleCase.full().without("/plan/moreOn"), Bite.class);
        assertThat(noWord.wordAgrees().missing()).containsExactly("/plan/moreOn");
        assertThat(noWord.amountsDiffer()).hasToString("yes");
        Bite noAmount = first(SampleCase.full().without("/plan/advanceLeft"), Bite.class);
        assertThat(noAmount.wordAgrees().missing()).containsExactly("/plan/advanceLeft");
        assertThat(noAmount.amountsDiffer().missing()).containsExactly("/plan/advanceLeft");
        assertThat(noAmount.carriesOff().missing()).containsExactly("/plan/advanceLeft");
    }

    @Test
    void inASidedPlanTheOtherSideIsWatched() {
        CaseBuilder b = SampleCase.full();
        Progress even = first(b.set("/plan/moreOn", "both"), Progress.class);
        assertThat(even.otherSideLeads().applies()).isFalse();
        double leftLeads = first(b.set("/plan/moreOn", "right"), Progress.class)
                .otherSideLeads()
                .value();
        assertThat(first(b.set("/plan/moreOn", "left"), Progress.class)
                        .otherSideLeads()
                        .value())
                .isCloseTo(-leftLeads, within(1e-12));
        assertThat(Math.abs(leftLeads)).isCloseTo(even.sidesApart().value(), within(1e-12));
    }

    /** An answer holds; else a tube without a hook settles it, and one that may have a hook is asked about. */
    @ParameterizedTest
    @CsvSource({
        "yes, yes, yes, ''",
        "no, no, no, ''",
        "yes, '', yes, ''",
        "never, yes, unknown, /insertion/left/underHook",
        "never, no, does not apply, ''",
        "never, '', unknown, /hardware/left/hook",
        "'', yes, unknown, /insertion/left/underHook",
        "'', no, does not apply, ''",
        "'', '', unknown, /insertion/left/underHook"
    })
    void aHookThatIsThereIsAskedAbout(String answer, String hook, String under, String missing) {
        CaseBuilder b = SampleCase.full().without("/insertion/left/underHook").without("/hardware/left/hook");
        if (!answer.isEmpty()) {
            b.set(
                    "/insertion/left/underHook",
                    answer.equals("never") ? CaseBuilder.NOT_APPLICABLE : answer.equals("yes"));
        }
        if (!hook.isEmpty()) {
            b.set("/hardware/left/hook", hook.equals("yes"));
        }
        InsertedEnd end = first(b, InsertedEnd.class);
        assertThat(end.underHook()).hasToString(under);
        assertThat(String.join(" ", end.underHook().missing())).isEqualTo(missing);
    }

    @Test
    void aSecondMolarThatIsThereHasAnAngle() {
        CaseBuilder b = SampleCase.full().set("/films/secondMolarAngleLeft", CaseBuilder.NOT_APPLICABLE);
        assertThat(first(b.set("/teeth/37/state", "unerupted"), FirstMolar.class)
                        .secondMolarAngle()
                        .missing())
                .containsExactly("/films/secondMolarAngleLeft");
        assertThat(first(b.set("/teeth/37/state", "missing"), FirstMolar.class)
                        .secondMolarAngle()
                        .applies())
                .isFalse();
    }

    /**
     * Bending stiffness of round wire goes with d^4 (beam theory): 0.020 in against 0.016 in is (20 / 16)^4 = 2.4414.
     */
    @Test
    void aWireIsHeldAgainstThePlannedOne() {
        Wire wire = first(
                SampleCase.full()
                        .set("/wire/plannedSize", 0.4064)
                        .set("/wire/size", 0.508)
                        .set("/wire/modulus", 180),
                Wire.class);
        assertThat(wire.stiffnessRatio().value()).isCloseTo(2.4414, within(1e-4));
    }
}
