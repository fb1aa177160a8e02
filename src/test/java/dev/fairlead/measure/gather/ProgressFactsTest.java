package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.Progress;
import dev.fairlead.facts.SideProgress;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Folds with a leg of L = 3 mm. Opened by half of it, its bends turn by 30 degrees and their radius grows to 1.2 r
 * (length kept), so the front travels 2 x 1.2 r x 0.5 + 3 (1 - cos 30) = 1.2 r + 0.4019 mm; upright, 4 r + 3; each
 * millimetre that is said beyond that counts as one.
 */
class ProgressFactsTest {
    private static final double LEG = 3 * (1 - Math.sqrt(0.75));

    /** Both folds as made, inner radius 0.75 mm; the left was opened by 1.5 mm at the first of two visits. */
    private static CaseBuilder opened() {
        CaseBuilder b = new CaseBuilder();
        for (String side : new String[] {"left", "right"}) {
            b.set("/bench/" + side + "/length", 3.0).set("/bench/" + side + "/bendRadius", 0.75);
        }
        return b.set("/visits/0/activated", "left")
                .set("/visits/0/left/gapOpened", 1.5)
                .set("/visits/1/activated", "none");
    }

    private static Progress progress(CaseBuilder b) {
        return Made.first(b, Progress.class);
    }

    private static SideProgress left(CaseBuilder b) {
        return Made.first(b, SideProgress.class);
    }

    private static void close(Measured m, double expected) {
        assertThat(m.value()).isCloseTo(expected, within(1e-9));
    }

    /** The radius at the wire's middle is the inner one and half the wire; a wire has 0.3 to 0.8 mm. */
    @Test
    void withoutTheSizeOfTheWireTheLeadLiesBetweenThatOfTheThinnestAndTheThickest() {
        double thin = 1.2 * (0.75 + 0.15) + LEG;
        double thick = 1.2 * (0.75 + 0.4) + LEG;
        CaseBuilder b = opened().set("/plan/moreOn", "right");
        assertThat(progress(b).sidesApart().missing()).containsExactly("/wire/size");
        close(progress(b).sidesApartSoFar(), thin);
        close(progress(b).otherSideLeadsSoFar(), thin);
        close(progress(b.set("/plan/moreOn", "left")).otherSideLeadsSoFar(), -thick);
        b.set("/wire/size", 0.5);
        close(progress(b).sidesApart(), 1.2 + LEG);
        assertThat(progress(b).sidesApartSoFar()).isEqualTo(progress(b).sidesApart());
        close(progress(b).otherSideLeads(), -1.2 - LEG);
    }

    /** An opening that nobody wrote down did nothing, or as much as one can write: 6 mm on a leg of 3 is 4 r + 6. */
    @Test
    void withoutAnOpeningTheLeadLiesBetweenNoneAndTheWidest() {
        CaseBuilder b = opened().set("/wire/size", 0.5).set("/visits/1/activated", "right");
        assertThat(progress(b).sidesApart().missing()).containsExactly("/visits/1/right/gapOpened");
        assertThat(progress(b).sidesApartSoFar().value())
                .as("the right may have come as far as the left")
                .isZero();
        close(progress(b.set("/plan/moreOn", "right")).otherSideLeadsSoFar(), 1.2 + LEG - 10);
        close(progress(b.set("/plan/moreOn", "left")).otherSideLeadsSoFar(), -1.2 - LEG);
        b.set("/visits/1/activated", "left");
        assertThat(progress(b).sidesApart().missing()).containsExactly("/visits/1/left/gapOpened");
        close(progress(b).sidesApartSoFar(), 1.2 + LEG);
        // 1.5 and 6 mm: 4 r + 7.5
        close(progress(b).otherSideLeadsSoFar(), -11.5);
    }

    @Test
    void aLeadThatIsKnownOrDoesNotApplyHasNoBounds() {
        Case c = opened().build();
        assertThat(LeadBounds.of(c, Measured.exact(1, Unit.MM))).isEmpty();
        assertThat(LeadBounds.of(c, Measured.notApplicable())).isEmpty();
        assertThat(LeadBounds.of(c, Measured.unknown("/wire/size"))).hasSize(4);
    }

    /** Reach 4 r + L = 7 mm for r = 1 mm; what is left is less than that by what was used or is planned. */
    @Test
    void wireLeftInAFold() {
        CaseBuilder b = opened().set("/wire/size", 0.5).set("/plan/advanceLeft", 1.0);
        close(left(b).foldWireSpare(), 7 - 1.2 - LEG);
        close(left(b.set("/plan/advanceLeft", 2.0)).foldWireSpare(), 5);
        b.set("/wire/beakRadius", 0.75).without("/bench/left/bendRadius");
        assertThat(left(b).foldWireSpare().missing())
                .as("the planned beak does not tell the fold that was made")
                .containsExactly("/bench/left/bendRadius");
        assertThat(left(b.drop("/visits")).foldWireSpare().missing()).containsExactly("/visits");
    }

    /** The last reading counts, and where it was not taken the largest that was. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"0.5, 3, 1, -1", "0.5, 3, -, 1", "3, 0.5, -, 1"})
    void howFarTheIncisorsArePastThePlan(Double first, Double second, Double third, double past) {
        CaseBuilder b = new CaseBuilder().set("/plan/advanceLeft", 2.0);
        Double[] read = {first, second, third};
        for (int i = 0; i < 3; i++) {
            b.set("/visits/" + i + "/date", "2026-03-0" + (i + 1));
            if (read[i] != null) {
                b.set("/visits/" + i + "/incisorAdvance", read[i]);
            }
        }
        close(left(b).pastPlan(), past);
        assertThat(left(b).pastPlanNow().known()).isEqualTo(third != null);
    }

    /** Harm that was seen stays seen where the last visit has no reading. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0.2, 0.5, 0.3, 0.3",
                "0.2, 0.5, -, 0.5",
                "0.5, 0.2, -, 0.5",
                "-, 0.2, -, 0.2",
                "0.2, -, -, 0.2",
                "-0.5, -0.2, -, -0.2",
                "-, -, -, -"
            })
    void howFarTheMolarMovedBack(Double first, Double second, Double third, Double told) {
        CaseBuilder b = new CaseBuilder();
        Double[] read = {first, second, third};
        for (int i = 0; i < 3; i++) {
            b.set("/visits/" + i + "/date", "2026-03-0" + (i + 1));
            if (read[i] != null) {
                b.set("/visits/" + i + "/left/molarDistal", read[i]);
            }
        }
        Measured m = left(b).molarDistal();
        if (told == null) {
            assertThat(m.missing()).containsExactly("/visits/2/left/molarDistal");
        } else {
            close(m, told);
        }
        assertThat(left(b).molarDistalNow().known()).isEqualTo(third != null);
    }
}
