package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.geometry.Vector;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The whole wire against an independent reference model (a co-rotational frame written separately, with another
 * tangent).
 */
class WholeWireTest {
    private static final Percentage FORCE = Percentage.withPercentage(0.1);
    private static final Percentage STRESS = Percentage.withPercentage(0.1);

    @ParameterizedTest
    @ValueSource(strings = {"M10", "M11"})
    void linear(String id) {
        var c = ReferenceCase.of(id);
        Solution s = Bench.solved(c.setup());
        assertThat(s.forward()).isCloseTo(c.out("F_fwd"), FORCE);
        assertThat(s.vertical()).isCloseTo(c.out("F_vert"), FORCE);
        assertThat(s.forward() / 0.00980665).isCloseTo(c.out("F_fwd_gf"), FORCE);
        same(s.brackets(), c.list("per_bracket_fwd"));
        same(s.right().force(), c.list("molar_F_R"));
        same(s.left().force(), c.list("molar_F_L"));
        same(s.right().moment(), c.list("molar_M_R"));
        same(s.left().moment(), c.list("molar_M_L"));
        assertThat(s.peak().bending()).isCloseTo(c.out("sigma_bend"), STRESS);
        assertThat(s.peak().vonMises()).isCloseTo(c.out("sigma_vm"), STRESS);
    }

    private static void same(Vector v, List<Double> expected) {
        same(List.of(v.x(), v.y(), v.z()), expected);
    }

    private static void same(List<Double> values, List<Double> expected) {
        for (int i = 0; i < expected.size(); i++) {
            if (expected.get(i) == 0) {
                assertThat(values.get(i)).isZero();
            } else {
                assertThat(values.get(i)).as("%d of %s", i, expected).isCloseTo(expected.get(i), FORCE);
            }
        }
    }

    @Test
    void largeRotations() {
        var c = ReferenceCase.of("M12");
        double[] shares = {0.25, 0.5, 0.75, 1};
        List<Result> results = Mechanics.follow(c.setup(), shares);
        for (int i = 0; i < 4; i++) {
            Solution s = (Solution) results.get(i);
            var expected = c.outputs().get("at_" + (shares[i] == 1 ? "1" : String.valueOf(shares[i])) + "_of_standoff");
            assertThat(s.fraction()).isEqualTo(shares[i]);
            assertThat(s.forward()).isCloseTo(expected.get("F_fwd").doubleValue(), Percentage.withPercentage(0.01));
            assertThat(s.vertical()).isCloseTo(expected.get("F_vert").doubleValue(), Percentage.withPercentage(0.01));
            assertThat(s.peak().bending())
                    .isCloseTo(expected.get("sigma_bend").doubleValue(), Percentage.withPercentage(0.01));
        }
    }

    /** The coarse mesh of a band within 0.5 % of the fine one, in force as in stress within 1 %. */
    @Test
    void standardMeshIsFineEnough() {
        for (TailSupport tube : List.of(TailSupport.TWO_POINT, TailSupport.HINGE_SPIN)) {
            Solution coarse = Bench.solved(Bench.base(2).withTube(tube));
            Solution fine = Bench.solved(Bench.base(2).withTube(tube).withMesh(Mesh.FINE));
            assertThat(coarse.forward()).isCloseTo(fine.forward(), Percentage.withPercentage(0.5));
            assertThat(coarse.vertical()).isCloseTo(fine.vertical(), Percentage.withPercentage(0.5));
            assertThat(coarse.peak().bending()).isCloseTo(fine.peak().bending(), Percentage.withPercentage(1));
            assertThat(coarse.elements()).isLessThan(120);
        }
    }

    /** Halving all elements divides the error in force by about four. */
    @Test
    void errorFallsWithTheSquareOfTheElementLength() {
        Setup s = Bench.base(1.5).withTube(TailSupport.SPIN).withTheory(Theory.LINEAR);
        double limit = Bench.solved(s.withMesh(new Mesh(64, 0.0625))).forward();
        double coarse = Bench.solved(s.withMesh(new Mesh(4, 1))).forward() - limit;
        double middle = Bench.solved(s.withMesh(new Mesh(8, 0.5))).forward() - limit;
        double fine = Bench.solved(s.withMesh(new Mesh(16, 0.25))).forward() - limit;
        assertThat(coarse / middle).isBetween(3.2, 4.8);
        assertThat(middle / fine).isBetween(3.2, 4.8);
    }
}
