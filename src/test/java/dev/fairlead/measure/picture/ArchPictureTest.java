package dev.fairlead.measure.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Choices.PictureScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of an arch drawn with known points: closed forms, and what tilt and level of the ruler cost. */
class ArchPictureTest {
    /** Seen from above, front up: the patient's right lies on the right; mm. */
    private static final Map<String, double[]> ARCH = arch();

    private static Map<String, double[]> arch() {
        Map<String, double[]> a = new TreeMap<>();
        put(a, "M46", 24, 0, "M36", -24, 0, "D42", 10, 18, "D32", -10, 18, "I", 0, 23, "T46", 25, -1, "T36", -25, -1);
        put(a, "M43", 10.6, 18.8, "D43", 16, 14, "M33", -10, 17, "D33", -15, 13, "L43", 13, 17, "L33", -13, 17);
        put(a, "M42", 5, 21, "D41", 5.6, 20.2, "M41", 0, 21, "M31", -0.3, 21.4, "D31", -5, 21, "M32", -5, 20);
        put(a, "B41", 2.7, 24, "B31", -2.7, 24, "B42", 7.5, 21, "B32", -7.5, 21);
        return a;
    }

    private static void put(Map<String, double[]> a, Object... all) {
        for (int i = 0; i < all.length; i += 3) {
            a.put((String) all[i], new double[] {
                ((Number) all[i + 1]).doubleValue(), ((Number) all[i + 2]).doubleValue()
            });
        }
    }

    /** A pinhole camera straight above the middle of the arch, the plane tilted about an axis through that middle. */
    private record Camera(double distance, double pixelsPerMm, double turned, double tilt, double tiltAxis) {
        double[] sees(double x, double y, double up) {
            double[] p = {x, y - 10, up};
            double c = Math.cos(tiltAxis);
            double s = Math.sin(tiltAxis);
            double along = p[0] * c + p[1] * s;
            double off = -p[0] * s + p[1] * c;
            double off2 = off * Math.cos(tilt) - p[2] * Math.sin(tilt);
            double z = off * Math.sin(tilt) + p[2] * Math.cos(tilt);
            double u = along * c - off2 * s;
            double v = along * s + off2 * c;
            double f = Double.isInfinite(distance) ? pixelsPerMm : pixelsPerMm * distance / (distance - z);
            double a = Math.cos(turned);
            double b = Math.sin(turned);
            return new double[] {2000 + f * (u * a - v * b), 1500 - f * (u * b + v * a)};
        }
    }

    private static List<PlacedPoint> picture(Camera camera) {
        List<PlacedPoint> all = new ArrayList<>();
        ARCH.forEach((n, p) -> {
            double[] at = camera.sees(p[0], p[1], 0);
            all.add(PlacedPoint.flat(n, at[0], at[1]));
        });
        return all;
    }

    private static PictureScaling ruler(Camera camera, double up, double below, double distance) {
        double[] a = camera.sees(-20, -8, up);
        double[] b = camera.sees(20, -8, up);
        return Scales.knownLength(a[0], a[1], b[0], b[1], 40, false, below, distance);
    }

    private static Map<String, Double> read(List<PlacedPoint> points, PictureScaling scaling) {
        return byField(
                PictureMeasures.of(PictureKind.ARCH_PICTURE, points, List.of(), scaling, PictureMeasures.USUAL_SHARE));
    }

    private static Map<String, Double> byField(PictureResult r) {
        Map<String, Double> all = new TreeMap<>();
        r.values().forEach(v -> all.put(v.pointer(), v.value()));
        return all;
    }

    @ParameterizedTest
    @CsvSource({"8, 0", "8, 33", "24.5, 90", "24.5, 200", "60, 315"})
    void knownLengthsAreFoundAtEveryScaleAndTurn(double pixels, double degrees) {
        Camera camera = new Camera(Double.POSITIVE_INFINITY, pixels, Math.toRadians(degrees), 0, 0);
        Map<String, Double> v = read(picture(camera), ruler(camera, 0, 0, Double.POSITIVE_INFINITY));
        close(v, "/teeth/42/width", Math.hypot(5, 3));
        close(v, "/contacts/43-42", Math.hypot(0.6, 0.8));
        close(v, "/contacts/42-41", Math.hypot(0.6, 0.8));
        close(v, "/contacts/41-31", 0.5);
        close(v, "/contacts/31-32", 1);
        close(v, "/contacts/32-33", 1);
        close(v, "/space/left", Math.hypot(14, 18));
        close(v, "/space/right", Math.hypot(14, 18));
        // circle through (±10, 18) and (0, 23): radius (10² + 5²)/(2·5) = 12.5, half angle asin(10/12.5)
        close(v, "/space/incisors", 2 * 12.5 * Math.asin(0.8));
        close(v, "/arch/molarWidth", 50);
        close(v, "/arch/molarDepth", 24);
        close(v, "/arch/canineWidth", 26);
        close(v, "/arch/canineDepth", 6);
        close(v, "/hardware/brackets/41/fromMidline", 2.7);
        close(v, "/hardware/brackets/42/fromMidline", 2.7 + Math.hypot(4.8, 3));
    }

    private static void close(Map<String, Double> v, String field, double expected) {
        assertThat(v.get(field)).as(field).isCloseTo(expected, within(1e-9));
    }

    /** Bounds as worked out for a pinhole camera: molar width of 48 mm, one tooth, at 30, 45 and 60 cm. */
    @ParameterizedTest
    @CsvSource({"300, 0.28, 0.008", "450, 0.19, 0.006", "600, 0.14, 0.005"})
    void aTiltOfFiveDegreesStaysWithinItsBound(double distance, double millimetres, double share) {
        for (int axis = 0; axis < 180; axis += 5) {
            Camera camera = new Camera(distance, 20, 0, Math.toRadians(5), Math.toRadians(axis));
            double[] a = camera.sees(-20, 10, 0);
            double[] b = camera.sees(20, 10, 0);
            PictureScaling scaling = Scales.knownLength(a[0], a[1], b[0], b[1], 40, false, 0, distance);
            Map<String, Double> v = read(picture(camera), scaling);
            double molars = Math.abs(v.get("/arch/molarWidth") - 50) * 48 / 50;
            double tooth = Math.abs(v.get("/teeth/42/width") / Math.hypot(5, 3) - 1);
            assertThat(molars).as("axis %d", axis).isLessThan(millimetres * 1.75);
            assertThat(tooth).as("axis %d", axis).isLessThan(share * 2);
        }
    }

    /** 1.7 % at 30 cm and 0.8 % at 60 cm for a ruler 5 mm too low, which a told level takes out. */
    @ParameterizedTest
    @CsvSource({"300, 0.017", "600, 0.0084"})
    void theLevelOfTheRulerCostsWhatGeometrySays(double distance, double share) {
        Camera camera = new Camera(distance, 20, 0, 0, 0);
        Map<String, Double> blind = read(picture(camera), ruler(camera, -5, 0, distance));
        assertThat(blind.get("/arch/molarWidth") / 50 - 1).isCloseTo(share, within(5e-4));
        Map<String, Double> told = read(picture(camera), ruler(camera, -5, 5, distance));
        assertThat(told.get("/arch/molarWidth")).isCloseTo(50, within(1e-9));
        assertThat(ruler(camera, -5, Double.NaN, distance).relativeError())
                .as("what is not told is carried as an error")
                .isCloseTo(Math.hypot(5 / distance, Math.sqrt(2) * 0.08 / 40), within(1e-12));
    }

    @Test
    void aFrameRoundTheArchTakesPerspectiveOut() {
        Camera camera = new Camera(300, 20, 0.4, Math.toRadians(10), Math.toRadians(20));
        double[][] corners = {{-40, 50}, {40, 50}, {40, -30}, {-40, -30}};
        List<PlacedPoint> frame = new ArrayList<>();
        for (double[] c : corners) {
            double[] at = camera.sees(c[0], c[1], 0);
            frame.add(PlacedPoint.flat("R" + frame.size(), at[0], at[1]));
        }
        PictureScaling scaling = Scales.frame(frame, 80, 80);
        Map<String, Double> v = read(picture(camera), scaling);
        assertThat(v.get("/arch/molarWidth")).isCloseTo(50, within(1e-6));
        assertThat(v.get("/contacts/31-32")).isCloseTo(1, within(1e-6));
        PictureResult outside = PictureMeasures.of(
                PictureKind.ARCH_PICTURE,
                List.of(PlacedPoint.flat("M46", -9000, 0), PlacedPoint.flat("D42", 2000, 1500)),
                List.of(),
                scaling,
                0.65);
        assertThat(outside.doubts()).anyMatch(d -> d.startsWith("M46 lies outside the frame"));
        List<PlacedPoint> crossed = List.of(frame.get(0), frame.get(2), frame.get(1), frame.get(3));
        assertThatThrownBy(() -> Scales.frame(crossed, 80, 80)).hasMessageContaining("not in order");
    }

    @Test
    void aScanIsMeasuredInSpaceForWidthsAndFromAboveForTheRest() {
        List<PlacedPoint> scan = new ArrayList<>();
        double t = Math.toRadians(30);
        // the same arch tilted in space, with 43's distal contact 3 mm above the plane of the others
        ARCH.forEach((n, p) -> {
            double up = n.equals("L33") ? 3 : 0;
            scan.add(new PlacedPoint(
                    n, p[0], p[1] * Math.cos(t) - up * Math.sin(t), p[1] * Math.sin(t) + up * Math.cos(t)));
        });
        PictureResult r =
                PictureMeasures.of(PictureKind.SURFACE_SCAN, scan, List.of(), new PictureScaling.Millimetres(), 0.65);
        Map<String, Double> v = byField(r);
        assertThat(v.get("/teeth/42/width")).isCloseTo(Math.hypot(5, 3), within(1e-9));
        assertThat(v.get("/arch/canineWidth")).as("seen from above").isCloseTo(26, within(1e-9));
        assertThat(r.scale()).contains(PictureScale.MILLIMETRES);
    }

    @Test
    void whatIsPlacedTwiceGivesTheErrorOfThisHand() {
        Camera camera = new Camera(Double.POSITIVE_INFINITY, 20, 0, 0, 0);
        PictureScaling scaling = ruler(camera, 0, 0, Double.POSITIVE_INFINITY);
        List<PlacedPoint> points = picture(camera);
        List<PlacedPoint> again = points.stream()
                .filter(p -> PointGuide.twice(PictureKind.ARCH_PICTURE).contains(p.name()))
                .map(p -> PlacedPoint.flat(p.name(), p.x() + 4, p.y() - 2))
                .toList();
        PictureResult r = PictureMeasures.of(PictureKind.ARCH_PICTURE, points, again, scaling, 0.65);
        // Dahlberg: differences of 0.2 and 0.1 mm, sqrt((0.2² + 0.1²)/2/2)
        double own = Math.sqrt((0.04 + 0.01) / 4);
        assertThat(r.ownError().orElseThrow()).isCloseTo(own, within(1e-9));
        PictureValue side = value(r, "/space/left");
        assertThat(side.placing()).as("both ends were placed twice").isCloseTo(own, within(1e-4));
        assertThat(value(r, "/teeth/42/width").placing())
                .as("one end was placed twice")
                .isCloseTo(own * Math.sqrt(1.5), within(1e-4));
        assertThat(side.scale()).isCloseTo(side.value() * Math.sqrt(2) * 0.08 / 40, within(1e-9));
        PictureResult once = PictureMeasures.of(PictureKind.ARCH_PICTURE, points, List.of(), scaling, 0.65);
        assertThat(value(once, "/teeth/42/width").placing()).isEqualTo(0.15);
        assertThat(once.ownError()).isEmpty();
    }

    private static PictureValue value(PictureResult r, String field) {
        return r.values().stream()
                .filter(v -> v.pointer().equals(field))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void mirrorsExchangedPointsAndASingleToothAreTold() {
        Camera camera = new Camera(Double.POSITIVE_INFINITY, 20, 0, 0, 0);
        List<PlacedPoint> mirrored = picture(camera).stream()
                .map(p -> PlacedPoint.flat(p.name(), 4000 - p.x(), p.y()))
                .toList();
        PictureScaling tooth = Scales.knownLength(0, 0, 108, 0, 5.4, true, 0, Double.POSITIVE_INFINITY);
        PictureResult r = PictureMeasures.of(PictureKind.ARCH_PICTURE, mirrored, List.of(), tooth, 0.65);
        assertThat(r.doubts()).anyMatch(d -> d.contains("mirror")).anyMatch(d -> d.contains("single tooth"));
        // a tooth of 5.4 ± 0.1 mm alone is 1.9 %
        assertThat(r.scaleError()).isGreaterThan(1.9);
        assertThat(PictureMeasures.of(
                                PictureKind.ARCH_PICTURE, picture(camera), List.of(), ruler(camera, 0, 0, 300), 0.65)
                        .doubts())
                .isEmpty();
    }

    @Test
    void whatIsMissingIsNamed() {
        PictureResult r = PictureMeasures.of(
                PictureKind.ARCH_PICTURE,
                List.of(PlacedPoint.flat("D42", 10, 10), PlacedPoint.flat("M42", 60, 10)),
                List.of(),
                new PictureScaling.Uniform(0.1, 0.1, 0, PictureScale.KNOWN_LENGTH),
                0.65);
        assertThat(byField(r)).containsOnlyKeys("/teeth/42/width");
        assertThat(r.waiting())
                .contains(new PictureResult.Waiting("Contact 42-41, displacement", List.of("D41")))
                .contains(new PictureResult.Waiting("Segment right, 42 to 46", List.of("M46")));
        assertThat(PictureMeasures.of(
                                PictureKind.ARCH_PICTURE,
                                List.of(PlacedPoint.flat("D42", 10, 10), PlacedPoint.flat("M42", 60, 10)),
                                List.of(),
                                new PictureScaling.Unknown(),
                                0.65)
                        .values())
                .as("no length without a scale")
                .isEmpty();
    }

    @Test
    void landmarksOfACaseHaveTheirXToTheLeft() {
        Camera camera = new Camera(Double.POSITIVE_INFINITY, 20, 1, 0, 0);
        PictureScaling scaling = ruler(camera, 0, 0, Double.POSITIVE_INFINITY);
        List<PlacedPoint> points = picture(camera);
        Map<String, double[]> l = PictureMeasures.landmarks(PictureKind.ARCH_PICTURE, points, List.of(), scaling);
        assertThat(l.get("L33")).containsExactly(new double[] {13, 17}, within(1e-9));
        assertThat(l.get("L43")).containsExactly(new double[] {-13, 17}, within(1e-9));
        // placed again 0.4 mm farther to the front, of which the mean takes half
        double[] again = camera.sees(-13, 17.4, 0);
        Map<String, double[]> twice = PictureMeasures.landmarks(
                PictureKind.ARCH_PICTURE, points, List.of(PlacedPoint.flat("L33", again[0], again[1])), scaling);
        assertThat(twice.get("L33")).containsExactly(new double[] {13, 17.2}, within(1e-9));
        assertThat(twice.get("L43")).containsExactly(new double[] {-13, 17}, within(1e-9));
    }
}
