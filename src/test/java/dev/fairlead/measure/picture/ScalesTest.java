package dev.fairlead.measure.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Choices.PictureScale;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How pixels become millimetres: similar triangles, limits with what lies at and beyond them, and errors by hand. */
class ScalesTest {
    private static final double CLICKS = Math.sqrt(2) * 0.08;
    private static final double FAR = Double.POSITIVE_INFINITY;

    private static PictureScaling length(double pixels, double mm, double below, double distance) {
        return Scales.knownLength(0, 0, 0.6 * pixels, 0.8 * pixels, mm, false, below, distance);
    }

    private static double perPixel(PictureScaling s) {
        return s.place(1, 0).x();
    }

    @Test
    void aRulerBelowTheCuspsLooksSmallerThanItIs() {
        // 40 mm over 400 pixels; what lies 5 mm farther from a camera 300 mm off is seen smaller by 300 / 305
        assertThat(perPixel(length(400, 40, 0, FAR))).isCloseTo(0.1, within(1e-12));
        assertThat(perPixel(length(400, 40, 5, FAR))).isCloseTo(0.1, within(1e-12));
        assertThat(perPixel(length(400, 40, 5, 300))).isCloseTo(0.1 * 300 / 305, within(1e-12));
        assertThat(perPixel(length(400, 40, -5, 300))).isCloseTo(0.1 * 300 / 295, within(1e-12));
        assertThat(perPixel(length(400, 40, Double.NaN, 300))).isCloseTo(0.1, within(1e-12));
        assertThat(perPixel(length(400, 40, 5, Double.NaN)))
                .as("a camera is taken to stand 300 mm off")
                .isCloseTo(0.1 * 300 / 305, within(1e-12));
    }

    @Test
    void whatIsNotToldIsCarriedAsAnError() {
        // two ends of 0.08 mm over 40 mm; a told level is known to 1 mm, another to 5 mm, of the distance
        assertThat(length(400, 40, 0, FAR).relativeError()).isCloseTo(CLICKS / 40, within(1e-12));
        assertThat(length(400, 40, 5, 250).relativeError())
                .isCloseTo(Math.hypot(CLICKS / 40, 1 / 250.0), within(1e-12));
        assertThat(length(400, 40, Double.NaN, 250).relativeError())
                .isCloseTo(Math.hypot(CLICKS / 40, 5 / 250.0), within(1e-12));
        PictureScaling tooth = Scales.knownLength(0, 0, 54, 0, 5.4, true, 0, FAR);
        assertThat(tooth.relativeError()).isCloseTo(Math.hypot(CLICKS, 0.1) / 5.4, within(1e-12));
        assertThat(tooth.kind()).contains(PictureScale.SINGLE_TOOTH);
        assertThat(length(400, 40, 0, FAR).kind()).contains(PictureScale.KNOWN_LENGTH);
    }

    @Test
    void aLengthThatIsNoneIsRefused() {
        assertThat(perPixel(length(10, 40, 0, FAR))).isCloseTo(4, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> length(9.99, 40, 0, FAR))
                .withMessageContaining("lie upon each other");
        assertThat(perPixel(length(3000, 300, 0, FAR))).isCloseTo(0.1, within(1e-9));
        for (double mm : new double[] {0, -1, 300.1, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> length(400, mm, 0, FAR))
                    .withMessageContaining("up to 300");
        }
    }

    /** A frame of 50 by 40 mm over a square of 100 pixels: upper left, upper right, lower right, lower left. */
    private static final List<PlacedPoint> CORNERS = List.of(
            PlacedPoint.flat("a", 0, 0),
            PlacedPoint.flat("b", 100, 0),
            PlacedPoint.flat("c", 100, 100),
            PlacedPoint.flat("d", 0, 100));

    @Test
    void aFrameHasItsOriginBelowAtTheLeft() {
        PictureScaling frame = Scales.frame(CORNERS, 50, 40);
        near(frame.place(0, 100), 0, 0);
        near(frame.place(100, 100), 50, 0);
        near(frame.place(0, 0), 0, 40);
        near(frame.place(25, 25), 12.5, 30);
        near(frame.pixel(new Point(12.5, 30)), 25, 25);
        assertThat(frame.kind()).contains(PictureScale.FRAME);
        // two clicks over the shorter edge, and 0.2 % of a printer
        assertThat(frame.relativeError()).isCloseTo(Math.hypot(CLICKS / 40, 0.002), within(1e-12));
    }

    /** A trapezium as a camera sees a tilted rectangle: its diagonals cross at the picture of the middle. */
    @Test
    void theMiddleOfATiltedFrameIsWhereItsDiagonalsCross() {
        List<PlacedPoint> tilted = List.of(
                PlacedPoint.flat("a", 20, 10),
                PlacedPoint.flat("b", 80, 10),
                PlacedPoint.flat("c", 110, 90),
                PlacedPoint.flat("d", -10, 90));
        PictureScaling frame = Scales.frame(tilted, 50, 40);
        // both diagonals cross on the axis x = 50 at a third of the height: edges of 60 and 120 pixels
        near(frame.place(50, 10 + 80 / 3.0), 25, 20);
        near(frame.pixel(new Point(25, 20)), 50, 10 + 80 / 3.0);
        for (double[] p : new double[][] {{31, 40}, {90, 80}, {50, 12}}) {
            near(frame.pixel(frame.place(p[0], p[1])), p[0], p[1]);
        }
    }

    @Test
    void nothingHoldsBeyondTheCorners() {
        PictureScaling frame = Scales.frame(CORNERS, 50, 40);
        assertThat(frame.outside(50, 50)).isFalse();
        assertThat(frame.outside(0, 50)).as("on an edge").isFalse();
        assertThat(frame.outside(-1, 50)).isTrue();
        assertThat(frame.outside(101, 50)).isTrue();
        assertThat(frame.outside(50, -1)).isTrue();
        assertThat(frame.outside(50, 101)).isTrue();
    }

    @Test
    void aFrameIsRefusedUnlessItsCornersGoRound() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Scales.frame(CORNERS.subList(0, 3), 50, 40))
                .withMessage("a frame has four corners, not 3");
        List<PlacedPoint> back = List.of(CORNERS.get(3), CORNERS.get(2), CORNERS.get(1), CORNERS.get(0));
        List<PlacedPoint> line = List.of(CORNERS.get(0), CORNERS.get(1), PlacedPoint.flat("c", 200, 0), CORNERS.get(3));
        for (List<PlacedPoint> wrong : List.of(back, line)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Scales.frame(wrong, 50, 40))
                    .withMessageContaining("not in order");
        }
    }

    @ParameterizedTest
    @CsvSource({"20, 20", "300, 300", "20, 300"})
    void edgesOfAFrameAtTheirLimits(double width, double height) {
        assertThat(Scales.frame(CORNERS, width, height).relativeError()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"19.9, 40", "40, 19.9", "300.1, 40", "40, 300.1"})
    void edgesOfAFrameBeyondTheirLimits(double width, double height) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Scales.frame(CORNERS, width, height))
                .withMessage("a frame has edges of 20 to 300 mm");
    }

    @Test
    void aFilmIsSmallerThanItsReceptorShows() {
        PictureScaling s = Scales.spacing(0.21, 0.105, 1.05, false);
        // rows run down, millimetres up
        near(s.place(10, 10), 2, -1);
        near(s.pixel(new Point(2, -1)), 10, 10);
        assertThat(s.relativeError()).isEqualTo(0.01);
        near(Scales.spacing(0.21, 0.105, 1, false).place(10, 10), 2.1, -1.05);
        near(Scales.spacing(0.21, 0.105, 1.4, false).place(10, 10), 1.5, -0.75);
        for (double m : new double[] {0.99, 1.41, Double.NaN}) {
            assertThatIllegalArgumentException().isThrownBy(() -> Scales.spacing(0.2, 0.2, m, false));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0.1, 0", "0.1, 0, 0", "0.1, 0.1, -0.01", "1000, 0.1, 0"})
    void aScaleThatIsNoneIsRefused(double column, double row, double error) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PictureScaling.Uniform(column, row, error, PictureScale.PIXEL_SPACING))
                .withMessage("a scale is a positive number of mm for a pixel");
    }

    @Test
    void withoutAScaleNothingButTheTurnOfTheAxesHappens() {
        PictureScaling none = new PictureScaling.Unknown();
        near(none.place(3, 4), 3, -4);
        near(none.pixel(new Point(3, -4)), 3, 4);
        assertThat(none.lengths()).isFalse();
        assertThat(none.kind()).isEmpty();
        assertThat(none.outside(1e5, 1e5)).isFalse();
        PictureScaling millimetres = new PictureScaling.Millimetres();
        near(millimetres.place(3, 4), 3, 4);
        near(millimetres.pixel(new Point(3, 4)), 3, 4);
        assertThat(millimetres.lengths()).isTrue();
        assertThat(millimetres.kind()).contains(PictureScale.MILLIMETRES);
    }

    private static void near(Point p, double x, double y) {
        assertThat(p.x()).isCloseTo(x, within(1e-9));
        assertThat(p.y()).isCloseTo(y, within(1e-9));
    }
}
