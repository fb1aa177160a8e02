package dev.fairlead.measure.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.archform.ArchFamily;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Choices.PictureKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The arch form that is laid through points of a picture, and where it runs on it. */
class PictureFormTest {
    private static final BetaArch ARCH = new BetaArch(48, 25);
    private static final String[] POINTS = {"T46", "L43", "L42", "L41", "L31", "L32", "L33", "T36"};
    private static final double[] ALONG = {-1, -0.62, -0.4, -0.14, 0.14, 0.4, 0.62, 1};
    /** A frame of 80 mm seen askew. */
    private static final List<PlacedPoint> CORNERS = List.of(
            PlacedPoint.flat("K1", 310, 190),
            PlacedPoint.flat("K2", 1890, 260),
            PlacedPoint.flat("K3", 1950, 1820),
            PlacedPoint.flat("K4", 240, 1760));

    /** Points on the curve, its middle in the middle of the frame, as the picture shows them. */
    private static List<PlacedPoint> placed(PictureScaling scaling) {
        List<PlacedPoint> all = new ArrayList<>();
        for (int i = 0; i < POINTS.length; i++) {
            Point p = onPaper(ARCH.at(ALONG[i]));
            Point pixel = scaling.pixel(p);
            all.add(PlacedPoint.flat(POINTS[i], pixel.x(), pixel.y()));
        }
        return all;
    }

    /** Front up, the patient's left on the left of the picture. */
    private static Point onPaper(Point p) {
        return new Point(40 - p.x(), 25 + p.y());
    }

    @Test
    void pixelsAndMillimetresAreInverse() {
        for (PictureScaling s : List.of(Scales.frame(CORNERS, 80, 80), new PictureScaling.Unknown())) {
            for (double[] at : new double[][] {{500, 600}, {1200, 900}, {1500, 1600}}) {
                Point back = s.pixel(s.place(at[0], at[1]));
                assertThat(back.x()).isCloseTo(at[0], within(1e-6));
                assertThat(back.y()).isCloseTo(at[1], within(1e-6));
            }
        }
    }

    @Test
    void theCurveOfThePointsIsFoundAgain() {
        PictureScaling scaling = Scales.frame(CORNERS, 80, 80);
        PictureForm form = PictureMeasures.form(PictureKind.ARCH_PICTURE, placed(scaling), scaling)
                .orElseThrow();
        assertThat(form.family()).isEqualTo(ArchFamily.BETA);
        assertThat(form.points()).isEqualTo(8);
        assertThat(form.residual()).isLessThan(1e-3);
        Point first = form.line().get(0);
        Point right = onPaper(ARCH.at(-1));
        assertThat(first.distance(right)).isLessThan(0.01);
        double highest = form.line().stream().mapToDouble(Point::y).max().orElseThrow();
        assertThat(highest).as("the front is up").isCloseTo(25 + 25, within(0.05));
    }

    /** A case asks for five points at least; a lateral is an incisor as a central is. */
    @Test
    void fivePointsWithAnIncisorAreEnoughAndAnyNumberWithoutIsNot() {
        PictureScaling scaling = Scales.frame(CORNERS, 80, 80);
        List<PlacedPoint> all = placed(scaling);
        List<PlacedPoint> lateral = List.of(all.get(0), all.get(1), all.get(2), all.get(6), all.get(7));
        assertThat(PictureMeasures.form(PictureKind.ARCH_PICTURE, lateral, scaling)
                        .orElseThrow()
                        .points())
                .isEqualTo(5);
        List<PlacedPoint> none = new ArrayList<>(List.of(all.get(0), all.get(1), all.get(6), all.get(7)));
        for (double side : new double[] {-1, 1}) {
            Point pixel = scaling.pixel(onPaper(ARCH.at(side * 0.8)));
            none.add(PlacedPoint.flat(side < 0 ? "L44" : "L34", pixel.x(), pixel.y()));
        }
        assertThat(PictureMeasures.form(PictureKind.ARCH_PICTURE, none, scaling))
                .as("six points")
                .isEmpty();
    }

    @Test
    void fourPointsOrNoIncisorGiveNoForm() {
        PictureScaling scaling = Scales.frame(CORNERS, 80, 80);
        List<PlacedPoint> all = placed(scaling);
        assertThat(PictureMeasures.form(
                        PictureKind.ARCH_PICTURE, List.of(all.get(0), all.get(1), all.get(3), all.get(7)), scaling))
                .isEmpty();
        assertThat(PictureMeasures.form(PictureKind.ARCH_PICTURE, all.subList(0, 7), scaling))
                .isEmpty();
        assertThat(PictureMeasures.form(PictureKind.ARCH_PICTURE, all, new PictureScaling.Unknown()))
                .as("no form without a scale")
                .isEmpty();
    }
}
