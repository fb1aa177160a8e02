package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.BestPlane;
import dev.fairlead.measure.archform.DigitisedPoint;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.picture.PictureResult.Waiting;
import dev.fairlead.measure.statistics.DuplicateError;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Choices.PictureScale;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** From named points on a picture to numbers with their errors. */
public final class PictureMeasures {
    /** Where a lower incisor is taken to tip, as a share of edge to apex, when nobody says otherwise; from memory. */
    public static final double USUAL_SHARE = 0.65;

    /** So many points placed twice give an error of one's own. */
    private static final int ENOUGH = 5;

    private static final double TILTED = 0.05;

    /** A plane is laid through points, whichever teeth they are of. */
    private static final int ANY_TOOTH = 31;

    private PictureMeasures() {}

    /**
     * Works out all numbers that the points allow.
     *
     * @param again the same points placed a second time without sight of the first; those of {@link PointGuide#twice}
     * @param share of edge to apex at which the lower incisor is taken to tip
     */
    public static PictureResult of(
            PictureKind kind,
            Collection<PlacedPoint> points,
            Collection<PlacedPoint> again,
            PictureScaling scaling,
            double share) {
        if (!(share >= 0.4 && share <= 0.9)) {
            throw new IllegalArgumentException("the share of the tooth's length lies between 0.4 and 0.9");
        }
        List<String> doubts = new ArrayList<>();
        boolean film = kind == PictureKind.LATERAL_CEPHALOGRAM;
        Map<String, double[]> first = placed(points, scaling, doubts);
        Map<String, double[]> second = placed(again, scaling, doubts);
        second.keySet().retainAll(first.keySet());
        if (film && looksLeft(first, doubts)) {
            turn(first);
            turn(second);
        }
        Optional<Double> own = scaling.lengths() ? ownError(first, second) : Optional.empty();
        Map<String, double[]> mean = new TreeMap<>(first);
        second.forEach((name, p) -> mean.merge(name, p, PictureMeasures::middle));
        Places places = places(mean);
        List<Quantity> quantities = film
                ? FilmQuantities.of(share)
                : kind == PictureKind.PANORAMIC ? MolarQuantities.all() : ArchQuantities.of(places);
        List<PictureValue> values = new ArrayList<>();
        List<Waiting> waiting = new ArrayList<>();
        for (Quantity q : quantities) {
            boolean length = q.unit() == Unit.MM;
            List<String> missing = q.missing(places);
            if (length && !scaling.lengths()) {
                waiting.add(new Waiting(q.title(), List.of("the scale")));
            } else if (!missing.isEmpty()) {
                waiting.add(new Waiting(q.title(), missing));
            } else {
                values.add(value(q, places, own, second, length ? scaling.relativeError() : 0));
            }
        }
        doubts.addAll(arch(kind, places));
        if (scaling.kind().filter(PictureScale.SINGLE_TOOTH::equals).isPresent()) {
            doubts.add("The scale was taken from a single tooth: its error goes into every length, about "
                    + Math.round(1000 * scaling.relativeError()) / 10.0
                    + " % of it. Use a ruler or the printed frame.");
        }
        return new PictureResult(values, waiting, doubts, own, scaling.kind(), 100 * scaling.relativeError());
    }

    private static PictureValue value(
            Quantity q, Places places, Optional<Double> own, Map<String, double[]> twice, double relative) {
        double value = q.formula().applyAsDouble(places);
        double placing = own.isEmpty()
                ? q.assumed()
                : q.propagated(places, new Quantity.Errors() {
                    @Override
                    public double x(String name) {
                        return own.get() / (twice.containsKey(name) ? Math.sqrt(2) : 1);
                    }

                    @Override
                    public double y(String name) {
                        return x(name);
                    }
                });
        return new PictureValue(q.pointer(), q.title(), q.unit(), value, placing, Math.abs(value) * relative, q.note());
    }

    private static Map<String, double[]> placed(
            Collection<PlacedPoint> points, PictureScaling scaling, List<String> doubts) {
        Map<String, double[]> all = new TreeMap<>();
        for (PlacedPoint p : points) {
            if (scaling.outside(p.x(), p.y())) {
                doubts.add(p.name() + " lies outside the frame's corners and is left out: beyond them nothing holds the"
                        + " perspective.");
                continue;
            }
            Point at = scaling.place(p.x(), p.y());
            if (all.put(p.name(), new double[] {at.x(), at.y(), p.z()}) != null) {
                throw new IllegalArgumentException("point " + p.name() + " was placed more than once");
            }
        }
        return all;
    }

    private static double[] middle(double[] a, double[] b) {
        return new double[] {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2};
    }

    /** Dahlberg's error of all coordinates of points that were placed twice. */
    private static Optional<Double> ownError(Map<String, double[]> first, Map<String, double[]> second) {
        if (second.size() < ENOUGH) {
            return Optional.empty();
        }
        int axes = flat(first) ? 2 : 3;
        double[] differences = second.entrySet().stream()
                .flatMapToDouble(e -> IntStream.range(0, axes)
                        .mapToDouble(i -> e.getValue()[i] - Objects.requireNonNull(first.get(e.getKey()))[i]))
                .toArray();
        return Optional.of(DuplicateError.ofDifferences(differences));
    }

    /** Whether the head looks to the left, by what lies before what; a doubt where that is not told the same way. */
    private static boolean looksLeft(Map<String, double[]> at, List<String> doubts) {
        String[][] frontBehind = {{"Me", "Go"}, {"Or", "Po"}, {"N", "S"}, {"OPi", "OPm"}};
        int left = 0;
        int right = 0;
        for (String[] pair : frontBehind) {
            double[] front = at.get(pair[0]);
            double[] behind = at.get(pair[1]);
            if (front != null && behind != null) {
                if (front[0] < behind[0]) {
                    left++;
                } else {
                    right++;
                }
            }
        }
        if (left > 0 && right > 0) {
            doubts.add("The points do not agree which way the head looks: two of front and back were exchanged.");
        }
        return left > right;
    }

    private static void turn(Map<String, double[]> at) {
        at.values().forEach(p -> p[0] = -p[0]);
    }

    private static boolean flat(Map<String, double[]> at) {
        return at.values().stream().allMatch(p -> p[2] == 0);
    }

    /** On the plane of the picture, or on that of a scan's contacts. */
    private static Places places(Map<String, double[]> at) {
        return flat(at) ? new Places(at, Places.X, Places.Y) : onPlane(at);
    }

    private static Places onPlane(Map<String, double[]> at) {
        List<DigitisedPoint> on = points(at, "[MD]\\d\\d");
        if (on.size() < 3) {
            on = points(at, "[MDLTBE]\\d\\d|I");
        }
        if (on.size() < 2) {
            return new Places(at, Places.X, Places.Y);
        }
        if (on.size() == 2) {
            // of the planes through both the one that leans least: nothing but their distance is told
            DigitisedPoint a = on.get(0);
            DigitisedPoint b = on.get(1);
            on.add(new DigitisedPoint(a.tooth(), a.x() + a.y() - b.y(), a.y() + b.x() - a.x(), a.z()));
        }
        BestPlane plane = BestPlane.of(on);
        double[] u = plane.first().toArray();
        double[] v = plane.second().toArray();
        // seen from the side of the cusps: a scan's z grows upwards
        return u[0] * v[1] - u[1] * v[0] < 0 ? new Places(at, v, u) : new Places(at, u, v);
    }

    private static List<DigitisedPoint> points(Map<String, double[]> at, String names) {
        List<DigitisedPoint> points = new ArrayList<>();
        at.forEach((name, p) -> {
            if (name.matches(names)) {
                points.add(new DigitisedPoint(ANY_TOOTH, p[0], p[1], p[2]));
            }
        });
        return points;
    }

    private static List<String> arch(PictureKind kind, Places p) {
        List<String> doubts = new ArrayList<>();
        boolean ofArch = kind != PictureKind.LATERAL_CEPHALOGRAM && kind != PictureKind.PANORAMIC;
        if (ofArch && p.has("M46") && p.has("M36") && p.has("D42") && p.has("D32")) {
            Point right = p.flat("M46");
            Point across = p.flat("M36").minus(right);
            Point front = p.flat("D42").plus(p.flat("D32")).times(0.5).minus(right);
            Point incisors = p.flat("D32").minus(p.flat("D42"));
            // seen from above, front up, the right side of the patient lies on the right; in a table x grows to the
            // left,
            // and how the axes of a scan lie nobody knows
            double mirrored = across.x() * front.y() - across.y() * front.x();
            if (kind == PictureKind.ARCH_PICTURE && mirrored > 0 || kind == PictureKind.POINT_TABLE && mirrored < 0) {
                doubts.add(
                        "Seen from above the sides lie as in a mirror. If the picture was not taken in a mirror, left"
                                + " and right were exchanged.");
            }
            if (across.dot(incisors) < 0) {
                doubts.add("The incisors and the molars do not have left and right on the same sides: two points were"
                        + " exchanged.");
            }
            double l = p.across("D32", "M36");
            double r = p.across("D42", "M46");
            if (Math.abs(l - r) > TILTED * (l + r)) {
                doubts.add("The two side segments differ by more than a tenth: look whether the picture was taken from"
                        + " straight above.");
            }
        }
        return doubts;
    }

    /** The arch form through the labial points and tubes, on the plane of the picture or on that of a scan's points. */
    public static Optional<PictureForm> form(PictureKind kind, Collection<PlacedPoint> points, PictureScaling scaling) {
        if (!scaling.lengths() || kind == PictureKind.PANORAMIC || kind == PictureKind.LATERAL_CEPHALOGRAM) {
            return Optional.empty();
        }
        Map<String, double[]> at = placed(points, scaling, new ArrayList<>());
        Places p = places(at);
        Map<String, Point> places = new TreeMap<>();
        p.names().forEach(name -> places.put(name, p.flat(name)));
        return PictureForm.of(places);
    }

    /**
     * Landmarks of the arch as a case keeps them: x to the patient's left, y to the front, mm, by point name; the mean
     * of both placings where there are two.
     */
    public static Map<String, double[]> landmarks(
            PictureKind kind, Collection<PlacedPoint> points, Collection<PlacedPoint> again, PictureScaling scaling) {
        Map<String, double[]> at = placed(points, scaling, new ArrayList<>());
        placed(again, scaling, new ArrayList<>())
                .forEach((name, p) -> at.computeIfPresent(name, (same, first) -> middle(first, p)));
        if (!scaling.lengths() || !at.containsKey("M46") || !at.containsKey("M36") || kind == PictureKind.PANORAMIC) {
            return Map.of();
        }
        Places p = places(at);
        Point origin = p.flat("M46").plus(p.flat("M36")).times(0.5);
        Point left = p.flat("M36").minus(p.flat("M46")).unit();
        Point up = left.quarterTurn();
        double sum = 0;
        for (String name : p.names()) {
            sum += p.flat(name).minus(origin).dot(up);
        }
        Point front = sum < 0 ? up.times(-1) : up;
        Map<String, double[]> all = new HashMap<>();
        for (String name : p.names()) {
            Point d = p.flat(name).minus(origin);
            all.put(name, new double[] {d.dot(left), d.dot(front)});
        }
        return new TreeMap<>(all);
    }
}
