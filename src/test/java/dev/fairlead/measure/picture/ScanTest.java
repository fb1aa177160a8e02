package dev.fairlead.measure.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Choices.PictureKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Points of a scan lie in space: what they give does not hang on how the scan was turned. */
class ScanTest {
    private static final PictureScaling MM = new PictureScaling.Millimetres();

    /** Points of an arch, x to the patient's left, y to the front, z up, mm. */
    private final Map<String, double[]> arch = new TreeMap<>();

    private void put(String name, double x, double y, double z) {
        arch.put(name, new double[] {x, y, z});
    }

    /** Rotated about the vertical, then tilted about a horizontal axis (rotation formula of Rodrigues), degrees. */
    private List<PlacedPoint> turned(double turn, double axis, double tilt) {
        double c = Math.cos(Math.toRadians(turn));
        double s = Math.sin(Math.toRadians(turn));
        double ax = Math.cos(Math.toRadians(axis));
        double ay = Math.sin(Math.toRadians(axis));
        double ct = Math.cos(Math.toRadians(tilt));
        double st = Math.sin(Math.toRadians(tilt));
        List<PlacedPoint> all = new ArrayList<>();
        arch.forEach((name, p) -> {
            double x = p[0] * c - p[1] * s;
            double y = p[0] * s + p[1] * c;
            double along = (ax * x + ay * y) * (1 - ct);
            all.add(new PlacedPoint(
                    name,
                    x * ct + ay * p[2] * st + ax * along,
                    y * ct - ax * p[2] * st + ay * along,
                    p[2] * ct + (ax * y - ay * x) * st));
        });
        return all;
    }

    private static PictureResult read(PictureKind kind, List<PlacedPoint> points, List<PlacedPoint> again) {
        return PictureMeasures.of(kind, points, again, MM, 0.65);
    }

    private static PictureValue value(PictureResult r, String field) {
        return r.values().stream()
                .filter(v -> v.pointer().equals(field))
                .findFirst()
                .orElseThrow();
    }

    private void fourContacts() {
        put("M36", 22, 0, 0);
        put("M46", -22, 0, 0);
        put("D32", 10, 18, 0);
        put("D42", -10, 18, 0);
    }

    /** A tilt of less than a right angle leaves up up, so left stays left of front. */
    @Test
    void aTableInSpaceIsAMirrorsWhereItsSidesAreExchangedSeenFromAbove() {
        fourContacts();
        for (double turn = 0; turn < 360; turn += 30) {
            for (double axis = 0; axis < 180; axis += 30) {
                for (double tilt : new double[] {0, 30, 75}) {
                    String at = turn + " about " + axis + " by " + tilt;
                    List<PlacedPoint> points = turned(turn, axis, tilt);
                    assertThat(read(PictureKind.POINT_TABLE, points, List.of()).doubts())
                            .as(at)
                            .isEmpty();
                    List<PlacedPoint> mirrored = points.stream()
                            .map(p -> new PlacedPoint(p.name(), -p.x(), p.y(), p.z()))
                            .toList();
                    assertThat(read(PictureKind.POINT_TABLE, mirrored, List.of())
                                    .doubts())
                            .as(at)
                            .singleElement()
                            .asString()
                            .startsWith("Seen from above the sides lie as in a mirror.");
                }
            }
        }
    }

    /** Three points lie in one plane; the midpoint 2 mm above it counts by its foot. */
    @Test
    void threeContactsTellThePlane() {
        put("M46", -22, 0, 0);
        put("D42", -10, 18, 0);
        put("D32", 10, 18, 0);
        put("I", 0, 23, 2);
        put("L33", 13, 17, 4);
        PictureResult r = read(PictureKind.SURFACE_SCAN, turned(20, 70, 40), List.of());
        assertThat(value(r, "/space/right").value()).isCloseTo(Math.hypot(12, 18), within(1e-9));
        // circle through (±10, 18) and (0, 23): radius 12.5, half angle asin(10/12.5)
        assertThat(value(r, "/space/incisors").value()).isCloseTo(25 * Math.asin(0.8), within(1e-9));
    }

    /** Without contacts the other points of the teeth tell how the scan lies, and two points keep their distance. */
    @Test
    void fewContactsDoNotMakeAScanLevel() {
        put("T46", -25, 0, 0);
        put("T36", 25, 0, 0);
        put("L43", -13, 18, 0);
        put("L33", 13, 18, 0);
        put("D42", -10, 17, 0);
        put("M42", -5, 20, 0);
        put("I", 0, 24, 0);
        PictureResult r = read(PictureKind.SURFACE_SCAN, turned(20, 70, 40), List.of());
        assertThat(value(r, "/arch/molarWidth").value()).isCloseTo(50, within(1e-9));
        assertThat(value(r, "/arch/molarDepth").value()).isCloseTo(24, within(1e-9));
        assertThat(value(r, "/arch/canineWidth").value()).isCloseTo(26, within(1e-9));

        arch.clear();
        put("D42", -10, 18, 1);
        put("M46", -22, 0, 6);
        r = read(PictureKind.SURFACE_SCAN, turned(20, 70, 40), List.of());
        assertThat(value(r, "/space/right").value()).isCloseTo(Math.sqrt(12 * 12 + 18 * 18 + 5 * 5), within(1e-9));

        put("I", 0, 23, 8);
        put("D32", 10, 18, 1);
        arch.remove("M46");
        r = read(PictureKind.SURFACE_SCAN, turned(20, 70, 40), List.of());
        // three points lie in one plane: a circle over a chord of 20 mm at a height of hypot(5, 7)
        double height = Math.hypot(5, 7);
        double radius = (10 * 10 + height * height) / (2 * height);
        assertThat(value(r, "/space/incisors").value()).isCloseTo(2 * radius * Math.asin(10 / radius), within(1e-9));

        arch.remove("D32");
        arch.remove("I");
        assertThat(read(PictureKind.SURFACE_SCAN, turned(20, 70, 40), List.of()).values())
                .isEmpty();
    }

    @Test
    void theFormIsLaidOnThePlaneOfTheScan() {
        BetaArch curve = new BetaArch(48, 25);
        String[] names = {"T46", "L43", "L42", "L41", "L31", "L32", "L33", "T36"};
        double[] along = {-1, -0.62, -0.4, -0.14, 0.14, 0.4, 0.62, 1};
        for (int i = 0; i < names.length; i++) {
            Point p = curve.at(along[i]);
            put(names[i], p.x(), p.y(), 0);
        }
        PictureForm form = PictureMeasures.form(PictureKind.SURFACE_SCAN, turned(100, 10, 35), MM)
                .orElseThrow();
        assertThat(form.residual()).isLessThan(1e-3);
        List<Point> line = form.line();
        assertThat(line.get(0).distance(line.get(line.size() - 1))).isCloseTo(48, within(0.01));
    }

    @Test
    void landmarksLieInThePlaneOfTheScan() {
        fourContacts();
        put("L33", 13, 17, 3);
        put("L43", -13, 17, 0);
        Map<String, double[]> marks =
                PictureMeasures.landmarks(PictureKind.SURFACE_SCAN, turned(200, 60, 35), List.of(), MM);
        assertThat(marks.get("L33")).containsExactly(new double[] {13, 17}, within(1e-9));
        assertThat(marks.get("L43")).containsExactly(new double[] {-13, 17}, within(1e-9));
        assertThat(PictureMeasures.landmarks(
                        PictureKind.SURFACE_SCAN, turned(0, 0, 0).subList(0, 5), List.of(), MM))
                .as("one molar of two")
                .isEmpty();
    }

    /** Dahlberg's error sqrt(sum d^2 / 2n) over three coordinates of a scan's points, of which height is one. */
    @Test
    void theErrorOfThisHandCountsHeight() {
        fourContacts();
        put("I", 0, 23, 1);
        put("D42", -10, 18, 2);
        put("M42", -6, 21, 2);
        List<PlacedPoint> points = turned(0, 0, 0);
        List<PlacedPoint> again = points.stream()
                .filter(p -> PointGuide.twice(PictureKind.SURFACE_SCAN).contains(p.name()))
                .map(p -> new PlacedPoint(p.name(), p.x(), p.y() + 0.1, p.z() + 0.3))
                .toList();
        PictureResult r = read(PictureKind.SURFACE_SCAN, points, again);
        assertThat(r.ownError().orElseThrow()).isCloseTo(Math.sqrt((0.01 + 0.09) / 6), within(1e-12));
        // the mean of both placings of 42's distal contact lies 0.05 mm to the front and 0.15 mm up, its mesial one
        // was placed once
        assertThat(value(r, "/teeth/42/width").value())
                .isCloseTo(Math.sqrt(4 * 4 + 2.95 * 2.95 + 0.15 * 0.15), within(1e-12));
    }
}
