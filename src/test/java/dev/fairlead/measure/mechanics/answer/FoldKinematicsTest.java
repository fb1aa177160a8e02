package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.BetaCurve;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Opening of a fold: closed forms against numbers worked out separately, and against the drawn centreline. */
class FoldKinematicsTest {
    private static final FoldSpec FOLD = new FoldSpec(1, 3, 3, 0, 0);

    @Test
    void openingForOnePointFive() {
        var c = ReferenceCase.of("M07");
        var fold = new FoldSpec(c.in("r"), c.in("L"), 3, 0, 20);
        double alpha = FoldKinematics.openingForForward(fold, c.in("forward")).orElseThrow();
        assertThat(alpha).isCloseTo(c.out("alpha_rad"), within(1e-6));
        assertThat(Math.toDegrees(alpha)).isCloseTo(c.out("alpha_deg"), within(1e-5));
        assertThat(FoldKinematics.forward(fold, alpha)).isCloseTo(c.out("forward"), within(1e-9));
        assertThat(FoldKinematics.gingival(fold, alpha)).isCloseTo(c.out("gingival"), within(1e-6));
        assertThat(FoldKinematics.legGap(fold, alpha)).isCloseTo(c.out("leg_gap_opening"), within(1e-6));
        assertThat(FoldKinematics.smallAngleForwardPerGap(fold))
                .isCloseTo(c.out("small_angle_forward_per_mm_gap"), within(1e-6));
    }

    /** Rounded values of the independent reference model: forward, gap, degrees per bend, gingival. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.61, 11.8, 0.85", "1.0, 1.07, 20.8, 1.44", "1.5, 1.43, 28.5, 1.90", "2.0, 1.74, 35.4, 2.26"})
    void tableOfOpenings(double forward, double gap, double degrees, double gingival) {
        double alpha = FoldKinematics.openingForForward(FOLD, forward).orElseThrow();
        assertThat(FoldKinematics.legGap(FOLD, alpha)).isCloseTo(gap, within(0.006));
        assertThat(Math.toDegrees(alpha)).isCloseTo(degrees, within(0.06));
        assertThat(FoldKinematics.gingival(FOLD, alpha)).isCloseTo(gingival, within(0.006));
    }

    @ParameterizedTest
    @CsvSource({"0.6, 3, 0.1", "1, 5, 1.2", "1.25, 4, 2.5"})
    void inversesUndoTheForms(double r, double leg, double value) {
        var fold = new FoldSpec(r, leg, leg, 0.5, 10);
        double byForward = FoldKinematics.openingForForward(fold, value).orElseThrow();
        assertThat(FoldKinematics.forward(fold, byForward)).isCloseTo(value, within(1e-10));
        // both bends open by as much, the middle leg turns once
        assertThat(FoldKinematics.legGap(fold, byForward)).isCloseTo(leg * Math.sin(byForward), within(1e-10));
    }

    @Test
    void smallOpeningFollowsTheSmallAngleRatio() {
        double alpha = 1e-5;
        assertThat(FoldKinematics.forward(FOLD, alpha) / FoldKinematics.legGap(FOLD, alpha))
                .isCloseTo(2.0 / 3, within(1e-4));
    }

    @Test
    void closedFoldAndOutOfReach() {
        assertThat(FoldKinematics.openingForForward(FOLD, 0).orElseThrow()).isZero();
        assertThat(FoldKinematics.openingForForward(FOLD, 50)).isEmpty();
        assertThat(FoldKinematics.openingForForward(FOLD, -1)).isEmpty();
    }

    /** The travel of the closed forms is the travel of the drawn wire, and the wire keeps its length. */
    @ParameterizedTest
    @CsvSource({"0.3, 1, 3, 3, 0", "0.9, 0.6, 5, 4, 1"})
    void drawnFoldAgrees(double alpha, double r, double leg, double leg3, double gap) {
        var fold = new FoldSpec(r, leg, leg3, gap, 25);
        var arch = new ArchGeometry(new BetaCurve(44, 24), 3, 2.7, 8.3);
        var mesh = new Mesh(400, 0.5);
        Setup open = new Setup(
                Bench.WIRE,
                arch,
                fold,
                fold,
                alpha,
                alpha,
                TailSupport.SPIN,
                Ties.FOUR,
                Seat.LEVEL,
                Theory.LINEAR,
                mesh);
        Centreline drawn = Centreline.of(open);
        int tube = drawn.right.tubeMesial();
        double w = FoldKinematics.gingival(fold, alpha);
        assertThat(drawn.nodes[3 * tube + 1]).isCloseTo(-FoldKinematics.forward(fold, alpha), within(1e-9));
        assertThat(drawn.nodes[3 * tube + 2]).isCloseTo(w * Math.cos(Math.toRadians(25)), within(1e-9));
        assertThat(drawn.nodes[3 * tube]).isCloseTo(-22 + w * Math.sin(Math.toRadians(25)), within(1e-9));
        assertThat(drawn.length(tube, drawn.right.foldEnd())).isCloseTo(fold.wireLength(), within(1e-4));
    }
}
