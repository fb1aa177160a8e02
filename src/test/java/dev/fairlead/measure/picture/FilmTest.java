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
import org.junit.jupiter.params.provider.ValueSource;

/** Films drawn with known angles, and errors against published ones. */
class FilmTest {
    private static final double MP = Math.toRadians(-25);

    /** A head that looks to the right, mm, y up: Frankfort level, mandibular plane 25° down, incisor at 95°. */
    private static Map<String, double[]> head() {
        Map<String, double[]> h = new TreeMap<>();
        double[] n = {70, 28};
        h.put("Po", new double[] {-5, 0});
        h.put("Or", new double[] {70, 0});
        h.put("N", n);
        h.put("S", off(n, 68, 187));
        h.put("A", off(n, 55, 187 + 81));
        h.put("B", off(n, 92, 187 + 78));
        h.put("Me", new double[] {62, -82});
        h.put("Go", off(h.get("Me"), 65, 180 - 25));
        h.put("Pog", new double[] {66, -74});
        h.put("L1a", new double[] {58, -60});
        // apex to edge turned 95° back from menton to gonion
        h.put("L1", off(h.get("L1a"), 22, 180 - 25 - 95));
        double[] u = {Math.cos(MP + Math.toRadians(17)), Math.sin(MP + Math.toRadians(17))};
        double[] l1 = h.get("L1");
        h.put("U1", new double[] {l1[0] + 4 * u[0] + 3 * u[1], l1[1] + 4 * u[1] - 3 * u[0]});
        // the labial face 0.9 mm before the edge, at the height of the upper edge 3 mm above
        h.put("L1f", new double[] {l1[0] + 0.9 * u[0] + 3 * u[1], l1[1] + 0.9 * u[1] - 3 * u[0]});
        h.put("OPi", new double[] {l1[0], l1[1]});
        h.put("OPm", new double[] {l1[0] - 35 * u[0], l1[1] - 35 * u[1]});
        return h;
    }

    private static double[] off(double[] from, double length, double degrees) {
        double a = Math.toRadians(degrees);
        return new double[] {from[0] + length * Math.cos(a), from[1] + length * Math.sin(a)};
    }

    private static List<PlacedPoint> film(double pixelsPerMm, double degrees, boolean toTheLeft) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        List<PlacedPoint> all = new ArrayList<>();
        head().forEach((name, p) -> {
            double x = p[0] * c - p[1] * s;
            double y = p[0] * s + p[1] * c;
            all.add(PlacedPoint.flat(name, 900 + (toTheLeft ? -1 : 1) * x * pixelsPerMm, 900 - y * pixelsPerMm));
        });
        return all;
    }

    private static Map<String, PictureValue> read(List<PlacedPoint> film, PictureScaling scaling) {
        Map<String, PictureValue> all = new TreeMap<>();
        PictureMeasures.of(PictureKind.LATERAL_CEPHALOGRAM, film, List.of(), scaling, 0.65)
                .values()
                .forEach(v -> all.put(v.pointer().isEmpty() ? "edge to edge" : v.pointer(), v));
        return all;
    }

    @ParameterizedTest
    @CsvSource({"5, 0, false", "5, 0, true", "11.8, 12, false", "11.8, -9, true"})
    void anglesAndLengthsAreFoundWhicheverWayTheHeadLooks(double pixels, double degrees, boolean toTheLeft) {
        // spacing of a receptor on which everything is 8 % larger than the head
        PictureScaling scaling = Scales.spacing(1.08 / pixels, 1.08 / pixels, 1.08, false);
        Map<String, PictureValue> v = read(film(pixels, degrees, toTheLeft), scaling);
        close(v, "/headFilm/incisorMandibular", 95);
        close(v, "/headFilm/mandibularPlane", 25);
        close(v, "/headFilm/anb", 3);
        close(v, "/headFilm/occlusalMandibular", 17);
        close(v, "/headFilm/tippingRadius", 0.65 * 22);
        close(v, "/bite/overbite", 3);
        close(v, "edge to edge", 4);
        close(v, "/bite/overjet", 3.1);
        // distance to the line from pogonion to A, in front of it positive; the signed double area over the base
        double[] a = head().get("A");
        double[] pog = head().get("Pog");
        double[] l1 = head().get("L1");
        double area = (l1[0] - pog[0]) * (a[1] - pog[1]) - (l1[1] - pog[1]) * (a[0] - pog[0]);
        close(v, "/headFilm/incisorToAPog", area / Math.hypot(a[0] - pog[0], a[1] - pog[1]));
        assertThat(v.get("/headFilm/tippingRadius").scale())
                .as("an asked magnification is known to 1 %")
                .isCloseTo(0.01 * 0.65 * 22, within(1e-9));
        assertThat(v.get("/headFilm/anb").scale()).as("an angle needs no scale").isZero();
    }

    private static void close(Map<String, PictureValue> v, String field, double expected) {
        assertThat(v.get(field).value()).as(field).isCloseTo(expected, within(1e-9));
    }

    @Test
    void aClassThreeHeadHasANegativeAnb() {
        List<PlacedPoint> film = new ArrayList<>(film(5, 0, false));
        double[] n = head().get("N");
        double[] b = off(n, 92, 187 + 85);
        film.removeIf(p -> p.name().equals("B"));
        film.add(PlacedPoint.flat("B", 900 + 5 * b[0], 900 - 5 * b[1]));
        close(read(film, new PictureScaling.Unknown()), "/headFilm/anb", -4);
    }

    /** Dahlberg's error of five points that differ by 0.2 and 0.1 mm: sqrt((0.2² + 0.1²) / 2 / 2), however it looks. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whatIsPlacedTwiceGivesTheErrorWhicheverWayTheHeadLooks(boolean toTheLeft) {
        List<PlacedPoint> film = film(10, 0, toTheLeft);
        List<PlacedPoint> again = film.stream()
                .filter(p -> PointGuide.twice(PictureKind.LATERAL_CEPHALOGRAM).contains(p.name()))
                .map(p -> PlacedPoint.flat(p.name(), p.x() + 2, p.y() + 1))
                .toList();
        PictureScaling scaling = new PictureScaling.Uniform(0.1, 0.1, 0, PictureScale.PIXEL_SPACING);
        PictureResult r = PictureMeasures.of(PictureKind.LATERAL_CEPHALOGRAM, film, again, scaling, 0.65);
        assertThat(r.ownError().orElseThrow()).isCloseTo(Math.sqrt(0.05 / 4), within(1e-9));
        assertThat(r.doubts()).isEmpty();
    }

    /** On which side of A-Pog the front lies is told by other points; without them there is no sign. */
    @Test
    void anIncisorIsNotHeldToAPogWhileNobodyKnowsWhereTheFrontIs() {
        PictureScaling scaling = new PictureScaling.Uniform(0.2, 0.2, 0, PictureScale.PIXEL_SPACING);
        for (boolean toTheLeft : new boolean[] {false, true}) {
            List<PlacedPoint> film = new ArrayList<>(film(5, 0, toTheLeft));
            double whole = read(film, scaling).get("/headFilm/incisorToAPog").value();
            film.removeIf(p -> !List.of("L1", "A", "Pog", "N", "S").contains(p.name()));
            assertThat(read(film, scaling).get("/headFilm/incisorToAPog").value())
                    .isCloseTo(whole, within(1e-9));
            film.removeIf(p -> p.name().equals("S"));
            assertThat(read(film, scaling)).doesNotContainKey("/headFilm/incisorToAPog");
        }
    }

    @Test
    void frontAndBackThatWereExchangedAreTold() {
        for (boolean toTheLeft : new boolean[] {false, true}) {
            List<PlacedPoint> film = film(5, 0, toTheLeft).stream()
                    .map(p -> new PlacedPoint(exchanged(p.name()), p.x(), p.y(), 0))
                    .toList();
            PictureResult r = PictureMeasures.of(
                    PictureKind.LATERAL_CEPHALOGRAM, film, List.of(), new PictureScaling.Unknown(), 0.65);
            assertThat(r.doubts()).singleElement().asString().contains("do not agree which way the head looks");
        }
    }

    private static String exchanged(String name) {
        return name.equals("N") ? "S" : name.equals("S") ? "N" : name;
    }

    @Test
    void withoutAScaleThereAreAnglesOnly() {
        assertThat(read(film(5, 0, false), new PictureScaling.Unknown()).keySet())
                .containsExactlyInAnyOrder(
                        "/headFilm/incisorMandibular",
                        "/headFilm/mandibularPlane",
                        "/headFilm/anb",
                        "/headFilm/occlusalMandibular");
    }

    @Test
    void spacingThatIsCorrectedIsNotDividedAgain() {
        PictureScaling scaling = Scales.spacing(0.2, 0.2, 1.08, true);
        assertThat(scaling.place(100, 0).x()).isEqualTo(20);
        assertThat(scaling.relativeError()).isZero();
        assertThat(scaling.kind()).contains(PictureScale.PIXEL_SPACING);
        assertThatThrownBy(() -> Scales.spacing(0.2, 0.2, 8, false)).hasMessageContaining("1.08");
    }

    /**
     * Landmark errors of 0.59 mm along x and 0.56 mm along y (mean of 15 landmarks in 6 studies: Trpkova 1997, Am J
     * Orthod 112:165) give, propagated through the formulas, what is assumed: no assumed error is smaller. Simulated on
     * 30 films, ANB had 0.8 and the mandibular plane 1.6 degrees (Delamare 2012): ours lie at or above these too.
     */
    @Test
    void assumedErrorsAreHeldToPublishedLandmarkErrors() {
        Map<String, double[]> at = new TreeMap<>();
        head().forEach((n, p) -> at.put(n, new double[] {p[0], p[1], 0}));
        Places places = new Places(at, Places.X, Places.Y);
        Map<String, Double> propagated = new TreeMap<>();
        for (Quantity q : FilmQuantities.of(0.65)) {
            double sd = q.propagated(places, new Quantity.Errors() {
                @Override
                public double x(String name) {
                    return 0.59;
                }

                @Override
                public double y(String name) {
                    return 0.56;
                }
            });
            propagated.put(q.title(), sd);
            if (q.pointer().startsWith("/headFilm")) {
                assertThat(q.assumed()).as(q.title()).isGreaterThan(0.85 * sd).isLessThan(2.2 * sd);
            }
        }
        // closed form: two independent ends, 0.575 √2 / length, for the incisor (22 mm) and the plane (65 mm)
        double incisor = Math.toDegrees(0.575 * Math.sqrt(2) * Math.hypot(1 / 22.0, 1 / 65.0));
        assertThat(propagated.get("Lower incisor to mandibular plane (Go-Me)"))
                .isCloseTo(incisor, within(0.05))
                .isBetween(2.0, 2.5);
        assertThat(propagated.get("ANB")).isBetween(0.45, 0.9);
        assertThat(propagated.get("Mandibular plane (Go-Me) to Frankfort horizontal"))
                .isBetween(0.8, 1.6);
    }

    @Test
    void aSecondMolarThatLeansForwardIsPositiveOnBothSides() {
        List<PlacedPoint> film = new ArrayList<>();
        // as a panoramic film is looked at: the patient's left lies on the right
        molar(film, 36, 1300, 600, 4);
        molar(film, 37, 1400, 600, 16);
        molar(film, 46, 700, 600, -4);
        molar(film, 47, 600, 600, 5);
        Map<String, Double> v = new TreeMap<>();
        PictureMeasures.of(PictureKind.PANORAMIC, film, List.of(), new PictureScaling.Unknown(), 0.65)
                .values()
                .forEach(x -> v.put(x.pointer(), x.value()));
        assertThat(v.get("/films/secondMolarAngleLeft")).isCloseTo(12, within(1e-9));
        assertThat(v.get("/films/secondMolarAngleRight")).isCloseTo(9, within(1e-9));
    }

    /** A molar whose crown leans forward by so many degrees. */
    private static void molar(List<PlacedPoint> film, int tooth, double x, double y, double lean) {
        double mesial = tooth < 40 ? -1 : 1;
        double a = Math.toRadians(lean);
        film.add(PlacedPoint.flat("F" + tooth, x, y));
        film.add(PlacedPoint.flat("C" + tooth, x + mesial * 60 * Math.sin(a), y - 60 * Math.cos(a)));
    }
}
