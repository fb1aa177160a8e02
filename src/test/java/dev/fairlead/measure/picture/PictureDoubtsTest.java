package dev.fairlead.measure.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Choices.PictureScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Points that cannot be right are told, and lengths of an arch are those of plane geometry. */
class PictureDoubtsTest {
    /** Points of an arch in mm, x growing to the patient's left, y to the front. */
    private final Map<String, double[]> table = new TreeMap<>();

    PictureDoubtsTest() {
        put("M36", 22, 0);
        put("M46", -22, 0);
        put("D32", 10, 18);
        put("D42", -10, 18);
    }

    private void put(String name, double x, double y) {
        table.put(name, new double[] {x, y});
    }

    private PictureResult read() {
        return read(PictureKind.POINT_TABLE);
    }

    private PictureResult read(PictureKind kind) {
        return PictureMeasures.of(kind, points(), List.of(), new PictureScaling.Millimetres(), 0.65);
    }

    private List<PlacedPoint> points() {
        List<PlacedPoint> all = new ArrayList<>();
        table.forEach((n, p) -> all.add(PlacedPoint.flat(n, p[0], p[1])));
        return all;
    }

    private double value(String field) {
        return read().values().stream()
                .filter(v -> v.pointer().equals(field))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void anArchAsItIsRaisesNoDoubt() {
        assertThat(read().doubts()).isEmpty();
        // in a picture from above the patient's left lies on the left: the same points are then a mirror's
        assertThat(read(PictureKind.ARCH_PICTURE).doubts())
                .singleElement()
                .asString()
                .startsWith("Seen from above the sides lie as in a mirror.");
        assertThat(read(PictureKind.SURFACE_SCAN).doubts())
                .as("nobody knows its axes")
                .isEmpty();
    }

    @Test
    void sidesOfATableThatLieAsInAMirror() {
        table.values().forEach(p -> p[0] = -p[0]);
        assertThat(read().doubts())
                .singleElement()
                .asString()
                .startsWith("Seen from above the sides lie as in a mirror.");
        assertThat(read(PictureKind.ARCH_PICTURE).doubts()).isEmpty();
    }

    @Test
    void incisorsAndMolarsThatWereExchanged() {
        put("D32", -10, 18);
        put("D42", 10, 18);
        assertThat(read().doubts())
                .anyMatch(d -> d.startsWith("The incisors and the molars do not have left and right"));
    }

    /** Segments of 21 and 19 mm differ by a tenth of their mean; a tenth itself is no doubt, more is. */
    @ParameterizedTest
    @CsvSource({"21, 19, false", "19, 21, false", "21.1, 19, true", "19, 21.1, true"})
    void segmentsThatDifferByMoreThanATenth(double left, double right, boolean doubted) {
        put("M36", 10, 18 - left);
        put("M46", -10, 18 - right);
        assertThat(read().doubts().stream().anyMatch(d -> d.startsWith("The two side segments differ")))
                .isEqualTo(doubted);
    }

    @Test
    void aPointPlacedMoreThanOnceIsRefused() {
        List<PlacedPoint> twice = new ArrayList<>(points());
        twice.add(PlacedPoint.flat("D42", 1, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PictureMeasures.of(
                        PictureKind.POINT_TABLE, twice, List.of(), new PictureScaling.Millimetres(), 0.65))
                .withMessage("point D42 was placed more than once");
        for (double far : new double[] {1e6, -1e6, Double.NaN}) {
            assertThatIllegalArgumentException().isThrownBy(() -> PlacedPoint.flat("D42", far, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> PlacedPoint.flat("D42", 0, far));
            assertThatIllegalArgumentException().isThrownBy(() -> new PlacedPoint("D42", 0, 0, far));
        }
    }

    @Test
    void theShareOfTippingLiesWithinTheTooth() {
        for (double share : new double[] {0.39, 0.91, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PictureMeasures.of(
                            PictureKind.LATERAL_CEPHALOGRAM, List.of(), List.of(), new PictureScaling.Unknown(), share))
                    .withMessageContaining("between 0.4 and 0.9");
        }
        for (double share : new double[] {0.4, 0.9}) {
            List<PlacedPoint> incisor = List.of(PlacedPoint.flat("L1", 0, 0), PlacedPoint.flat("L1a", 0, 20));
            PictureValue v = PictureMeasures.of(
                            PictureKind.LATERAL_CEPHALOGRAM,
                            incisor,
                            List.of(),
                            new PictureScaling.Millimetres(),
                            share)
                    .values()
                    .get(0);
            assertThat(v.value()).isCloseTo(20 * share, within(1e-12));
            assertThat(v.title()).contains(Math.round(100 * share) + " % of edge to apex");
        }
    }

    /** 5.4 mm of a tooth known to 0.1 mm, with 0.08 mm for each end: sqrt(0.01 + 0.0128) / 5.4 = 2.8 %. */
    @Test
    void aSingleToothIsAPoorScale() {
        PictureScaling tooth = Scales.knownLength(0, 0, 108, 0, 5.4, true, 0, Double.POSITIVE_INFINITY);
        PictureResult r = PictureMeasures.of(PictureKind.PANORAMIC, List.of(), List.of(), tooth, 0.65);
        assertThat(r.doubts()).singleElement().asString().contains("about 2.8 % of it");
        assertThat(r.scaleError()).isCloseTo(100 * Math.sqrt(0.0228) / 5.4, within(1e-9));
        assertThat(r.scale()).contains(PictureScale.SINGLE_TOOTH);
    }

    /**
     * By way of contacts and along a circle through the middles of the contacts beside the laterals and the midpoint.
     */
    @Test
    void theWholeArchIsTheSumOfItsPieces() {
        put("D43", -16, 14);
        put("M43", -10.6, 18.8);
        put("D33", 15, 13);
        put("M33", 10, 17);
        put("I", 0, 23);
        double straight = Math.hypot(6, 14) + Math.hypot(5.7, 4.4) + Math.hypot(5, 4.5) + Math.hypot(7, 13);
        double expected = straight + throughThree(-10.3, 18.4, 0, 23, 10, 17.5);
        assertThat(value("/space/perimeter")).isCloseTo(expected, within(1e-9));
        // a primary canine stands in where no permanent one was placed, on its own side alone
        table.put("D83", table.remove("D43"));
        table.put("M83", table.remove("M43"));
        assertThat(value("/space/perimeter")).isCloseTo(expected, within(1e-9));
        put("L83", -13, 16);
        put("L33", 13, 16);
        assertThat(value("/arch/canineWidth")).isCloseTo(26, within(1e-9));
        assertThat(value("/arch/canineDepth")).isCloseTo(7, within(1e-9));
    }

    /** The permanent canine counts wherever a point of it was placed, the primary one where none was. */
    @ParameterizedTest
    @CsvSource({
        "D43, D83, L43",
        "L43, D83, D43",
        "M43, D83, L43",
        "M43, L83, L43",
        "D83, '', L83",
        "L83, '', D83",
        "M83, '', L43",
        "'', '', L43"
    })
    void theCanineThatWasPlacedIsTheOneThatIsMeasured(String placed, String beside, String missing) {
        put("I", 0, 23);
        put("D33", 15, 13);
        put("M33", 10, 17);
        put("L33", 13, 16);
        for (String name : List.of(placed, beside)) {
            if (!name.isEmpty()) {
                put(name, -13, 16);
            }
        }
        List<String> waits = read().waiting().stream()
                .filter(w ->
                        w.title().equals("Whole arch, 46 to 36") || w.title().equals("Width between the canines"))
                .flatMap(w -> w.points().stream())
                .toList();
        assertThat(waits).contains(missing).allMatch(p -> p.endsWith(missing.substring(1)));
    }

    /** Sides need a front to be told apart: of points on one line, or at right angles, nothing is said. */
    @Test
    void nothingIsSaidOfSidesThatCannotBeTold() {
        put("D32", 10, 0);
        put("D42", -10, 0);
        assertThat(read().doubts()).isEmpty();
        assertThat(read(PictureKind.ARCH_PICTURE).doubts()).isEmpty();
        put("D32", 0, 18);
        put("D42", 0, 20);
        assertThat(read().doubts()).noneMatch(d -> d.startsWith("The incisors and the molars"));
    }

    /** Five pieces, of which two have an assumed error of 0.3 mm, independent of each other: 0.3 sqrt 2 = 0.42 mm. */
    @Test
    void theWholeArchIsAssumedToBePlacedLessSurelyThanOneSide() {
        put("D43", -16, 14);
        put("M43", -10.6, 18.8);
        put("D33", 15, 13);
        put("M33", 10, 17);
        put("I", 0, 23);
        assertThat(read().values())
                .filteredOn(v -> v.pointer().startsWith("/space/"))
                .extracting(PictureValue::pointer, v -> Math.round(100 * v.placing()) / 100.0)
                .contains(tuple("/space/perimeter", 0.42), tuple("/space/left", 0.3));
    }

    /** Length of the arc over b, by the centre where perpendicular bisectors meet and the angles seen from there. */
    private static double throughThree(double ax, double ay, double bx, double by, double cx, double cy) {
        double d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by));
        double a = ax * ax + ay * ay;
        double b = bx * bx + by * by;
        double c = cx * cx + cy * cy;
        double ux = (a * (by - cy) + b * (cy - ay) + c * (ay - by)) / d;
        double uy = (a * (cx - bx) + b * (ax - cx) + c * (bx - ax)) / d;
        double from = Math.atan2(ay - uy, ax - ux);
        double to = Math.atan2(cy - uy, cx - ux);
        return Math.hypot(ax - ux, ay - uy) * Math.abs(from - to);
    }

    @Test
    void anArcThroughPointsOnALineIsTheLine() {
        Point a = new Point(-3, 1);
        Point b = new Point(1, 1);
        assertThat(ArchQuantities.arc(a, b, new Point(7, 1))).isCloseTo(10, within(1e-9));
        // half a circle of radius 5, and a quarter of one
        assertThat(ArchQuantities.arc(new Point(-5, 0), new Point(0, 5), new Point(5, 0)))
                .isCloseTo(5 * Math.PI, within(1e-9));
        double s = 5 / Math.sqrt(2);
        assertThat(ArchQuantities.arc(new Point(5, 0), new Point(s, s), new Point(0, 5)))
                .isCloseTo(2.5 * Math.PI, within(1e-9));
    }

    @Test
    void bracketsAreCountedAlongTheLineOfTheMiddleOnes() {
        put("B41", -2.7, 24);
        put("B31", 3.1, 24);
        put("B42", -7.5, 21);
        put("B32", 7.9, 21);
        put("I", 0.2, 23);
        assertThat(value("/hardware/brackets/41/fromMidline")).isCloseTo(2.9, within(1e-9));
        assertThat(value("/hardware/brackets/31/fromMidline")).isCloseTo(2.9, within(1e-9));
        assertThat(value("/hardware/brackets/42/fromMidline")).isCloseTo(2.9 + Math.hypot(4.8, 3), within(1e-9));
        assertThat(value("/hardware/brackets/32/fromMidline")).isCloseTo(2.9 + Math.hypot(4.8, 3), within(1e-9));
    }

    @Test
    void widthsOfBackTeethAreToldWhereTheirDistalContactWasPlaced() {
        assertThat(read().waiting())
                .extracting(PictureResult.Waiting::title)
                .contains("Width of 43", "Width of 42", "Width of 41")
                .contains("Width of 31", "Width of 32", "Width of 33")
                .doesNotContain("Width of 36", "Width of 46", "Width of 44", "Width of 85");
        put("D36", 26, -10);
        put("D44", -18, 8);
        assertThat(value("/teeth/36/width")).isCloseTo(Math.hypot(4, 10), within(1e-9));
        assertThat(read().waiting()).contains(new PictureResult.Waiting("Width of 44", List.of("M44")));
        String tips = "Width between the canine cusp tips";
        assertThat(read().values()).noneMatch(v -> v.title().equals(tips));
        assertThat(read().waiting()).noneMatch(w -> w.title().equals(tips));
        put("E43", -13, 15);
        assertThat(read().waiting()).contains(new PictureResult.Waiting(tips, List.of("E33")));
        table.remove("E43");
        put("E33", 11, 15);
        assertThat(read().waiting()).contains(new PictureResult.Waiting(tips, List.of("E43")));
        put("E43", -13, 15);
        assertThat(read().values()).anySatisfy(v -> {
            assertThat(v.title()).isEqualTo("Width between the canine cusp tips");
            assertThat(v.value()).isCloseTo(24, within(1e-9));
        });
    }

    /** JCGM 100:2008, 5.1.2: what a value was placed to and what its scale brings add in squares. */
    @Test
    void theWholeErrorIsThatOfPlacingAndOfScale() {
        List<PlacedPoint> tooth = List.of(PlacedPoint.flat("M42", 0, 0), PlacedPoint.flat("D42", 30, 40));
        PictureScaling scale = new PictureScaling.Uniform(0.1, 0.1, 0.04, PictureScale.KNOWN_LENGTH);
        PictureValue v = PictureMeasures.of(PictureKind.ARCH_PICTURE, tooth, List.of(), scale, 0.65)
                .values()
                .get(0);
        assertThat(v.value()).isCloseTo(5, within(1e-9));
        // assumed 0.15 mm for a width, and 4 % of 5 mm
        assertThat(v.sd()).isCloseTo(Math.hypot(0.15, 0.2), within(1e-9));
    }
}
