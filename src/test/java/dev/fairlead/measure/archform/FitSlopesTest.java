package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Slopes of a fit against fitting anew with one landmark moved. A polynomial is cut off at its ends, so that distances
 * of the posterior landmarks bend there: two per cent of what fitting anew gives.
 */
class FitSlopesTest {
    private static final double MOVE = 0.01;

    private static ArchCurve made(ArchFamily family) {
        return family == ArchFamily.BETA ? new BetaArch(45, 25) : SixthDegreeArch.ofShare(45, 25, 0.3);
    }

    @ParameterizedTest
    @EnumSource(
            value = ArchFamily.class,
            names = {"BETA", "SIXTH_DEGREE"})
    void slopesSayWhatFittingAnewGives(ArchFamily family) {
        List<DigitisedPoint> given = Arches.on(made(family), 0, new Random(1));
        Landmarks landmarks = Landmarks.of(given);
        ArchCurve curve = ArchFit.of(family, landmarks).curve();
        List<List<Point>> slopes = FitSlopes.of(curve, landmarks).slopes();
        int numbers = FitSlopes.numbers(curve).length;
        assertThat(numbers).isEqualTo(family.parameters());
        assertThat(slopes).hasSize(numbers).allSatisfy(s -> assertThat(s).hasSize(given.size()));
        Offset<Double> allowed = within(family == ArchFamily.BETA ? 2e-3 : 0.012);
        for (int k = 0; k < given.size(); k++) {
            double[] leftwards = change(family, given, k, MOVE, 0);
            double[] forward = change(family, given, k, 0, MOVE);
            for (int j = 0; j < numbers; j++) {
                Point slope = slopes.get(j).get(k);
                assertThat(slope.x()).as("number " + j + ", landmark " + k).isEqualTo(leftwards[j], allowed);
                assertThat(slope.y()).as("number " + j + ", landmark " + k).isEqualTo(forward[j], allowed);
            }
        }
    }

    /** Central difference of the fitted numbers, per mm. */
    private static double[] change(ArchFamily family, List<DigitisedPoint> given, int k, double x, double y) {
        double[] more = fitted(family, given, k, x, y);
        double[] less = fitted(family, given, k, -x, -y);
        double[] change = new double[more.length];
        for (int j = 0; j < change.length; j++) {
            change[j] = (more[j] - less[j]) / (2 * MOVE);
        }
        return change;
    }

    private static double[] fitted(ArchFamily family, List<DigitisedPoint> given, int k, double x, double y) {
        List<DigitisedPoint> moved = new ArrayList<>(given);
        DigitisedPoint p = given.get(k);
        moved.set(k, DigitisedPoint.flat(p.tooth(), p.x() + x, p.y() + y));
        return FitSlopes.numbers(ArchFit.of(family, Landmarks.of(moved)).curve());
    }

    @ParameterizedTest
    @EnumSource(
            value = ArchFamily.class,
            names = {"BETA", "SIXTH_DEGREE"})
    void theNumbersFixTheCurve(ArchFamily family) {
        ArchCurve curve = made(family);
        double[] numbers = FitSlopes.numbers(curve);
        assertThat(numbers[0]).isEqualTo(45, within(1e-12));
        assertThat(numbers[1]).isEqualTo(25, within(1e-12));
        ArchCurve again = FitSlopes.curve(numbers);
        assertThat(again).hasSameClassAs(curve);
        assertThat(again.at(0.7).distance(curve.at(0.7))).isLessThan(1e-12);
    }
}
