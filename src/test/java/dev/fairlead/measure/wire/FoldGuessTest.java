package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.mechanics.geometry.FoldRange;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.model.Side;
import org.junit.jupiter.api.Test;

/** What a fold may be that was planned and not measured, by the margins that the model states; bends at the middle. */
class FoldGuessTest {
    /** Wire of 0.508 mm: a beak of 0.746 mm makes bends of 1 mm. */
    private static CaseBuilder planned() {
        return BaseCase.of()
                .without("/bench/left/bendRadius")
                .without("/bench/left/length")
                .without("/bench/left/buccalTip");
    }

    private static FoldRange left(CaseBuilder b) {
        return FoldGuess.of(b.build(), Side.LEFT);
    }

    private static void is(FoldSpec fold, double r, double leg, double tip) {
        assertThat(fold.r()).as("radius").isCloseTo(r, within(1e-9));
        assertThat(fold.leg()).as("leg").isCloseTo(leg, within(1e-9));
        assertThat(fold.tipDeg()).as("tip").isCloseTo(tip, within(1e-9));
    }

    @Test
    void aMeasuredFoldIsWhatItIs() {
        FoldRange f = left(BaseCase.of()
                .set("/bench/left/bendRadius", 0.8)
                .set("/bench/left/length", 3.2)
                .set("/bench/left/buccalTip", 15));
        assertThat(f.known()).isTrue();
        is(f.nominal(), 1.054, 3.2, 15);
    }

    @Test
    void aPlannedFoldHasAMarginToBothSidesAndItsStiffestStandsUpright() {
        FoldRange f = left(planned());
        is(f.nominal(), 1, 3, 20);
        is(f.softest(), 1.25, 4, 20);
        is(f.stiffest(), 0.75, 2, 0);
    }

    @Test
    void withoutABeakBendsMayBeWhateverIsUsual() {
        FoldRange f = left(planned().without("/wire/beakRadius"));
        is(f.nominal(), 1, 3, 20);
        is(f.softest(), 1.25, 4, 20);
        is(f.stiffest(), 0.6, 2, 0);
    }

    @Test
    void noMarginMakesAFoldThatCannotBe() {
        // a bend at the middle is no tighter than half the wire and 0.1 mm; a leg no shorter than 1 mm
        FoldRange f = left(planned().set("/wire/beakRadius", 0.2).set("/hardware/left/length", 1.5));
        is(f.nominal(), 0.454, 1.5, 20);
        is(f.softest(), 0.704, 2.5, 20);
        is(f.stiffest(), 0.354, 1, 0);
    }

    @Test
    void whatWasMeasuredOfAFoldHasNoMargin() {
        FoldRange f = left(planned().set("/bench/left/length", 3.2));
        is(f.softest(), 1.25, 3.2, 20);
        is(f.stiffest(), 0.75, 3.2, 0);
        FoldRange tipped = left(planned().set("/bench/left/buccalTip", 12));
        is(tipped.softest(), 1.25, 4, 12);
        is(tipped.stiffest(), 0.75, 2, 12);
    }

    @Test
    void foldsAreMeasuredWhenRadiusLengthAndTipOfBothAre() {
        assertThat(FoldGuess.measured(BaseCase.of().build())).isTrue();
        for (String side : new String[] {"left", "right"}) {
            for (String what : new String[] {"bendRadius", "length", "buccalTip"}) {
                String pointer = "/bench/" + side + "/" + what;
                assertThat(FoldGuess.measured(BaseCase.of().without(pointer).build()))
                        .as("without " + pointer)
                        .isFalse();
            }
        }
    }
}
