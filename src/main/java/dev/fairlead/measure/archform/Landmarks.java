package dev.fairlead.measure.archform;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Landmarks of one lower arch in normal position: in the occlusal plane, origin midway between the posterior points, x
 * to the patient's left, y anterior, in order from right to left; off-plane is the RMS distance of the given points
 * from that plane, mm.
 */
public record Landmarks(List<Tooth> teeth, double offPlane) {

    /** One tooth's point in normal position. */
    public record Tooth(int tooth, Point point) {}

    public Landmarks {
        teeth = List.copyOf(teeth);
    }

    /** Normalises points given in any axes; refuses sets from which no arch can be read. */
    public static Landmarks of(List<DigitisedPoint> given) {
        if (given.size() < 3) {
            throw new IllegalArgumentException("an arch needs at least 3 landmarks, not " + given.size());
        }
        if (given.stream().map(DigitisedPoint::tooth).distinct().count() < given.size()) {
            throw new IllegalArgumentException("more than one landmark of the same tooth");
        }
        DigitisedPoint right = last(given, false);
        DigitisedPoint left = last(given, true);
        if (Teeth.antimere(left.tooth()) != right.tooth()) {
            throw new IllegalArgumentException("the arch ends at different teeth: " + Teeth.words(right.tooth())
                    + " and " + Teeth.words(left.tooth()));
        }
        BestPlane plane = BestPlane.of(given);
        Point pr = plane.project(right);
        Point pl = plane.project(left);
        if (pr.distance(pl) == 0) {
            throw new IllegalArgumentException("both posterior points coincide");
        }
        Point origin = pr.plus(pl).times(0.5);
        Point across = pl.minus(pr).unit();
        Point forward = across.quarterTurn();
        double side = given.stream()
                .mapToDouble(l -> plane.project(l).minus(origin).dot(forward))
                .sum();
        if (side == 0) {
            throw new IllegalArgumentException("the landmarks lie on one straight line");
        }
        Point anterior = side > 0 ? forward : forward.times(-1);
        List<Tooth> teeth = given.stream()
                .map(l -> new Tooth(l.tooth(), inFrame(plane.project(l).minus(origin), across, anterior)))
                .sorted(Comparator.comparingInt(Landmarks::order))
                .toList();
        refuseSwapped(teeth);
        return new Landmarks(teeth, plane.rms());
    }

    private static Point inFrame(Point p, Point across, Point anterior) {
        return new Point(p.dot(across), p.dot(anterior));
    }

    private static DigitisedPoint last(List<DigitisedPoint> given, boolean left) {
        return given.stream()
                .filter(l -> Teeth.left(l.tooth()) == left)
                .max(Comparator.comparingInt(l -> fromMidline(l.tooth())))
                .orElseThrow(() -> new IllegalArgumentException("no landmark on the " + (left ? "left" : "right")));
    }

    private static int order(Tooth t) {
        return (Teeth.left(t.tooth()) ? 1 : -1) * fromMidline(t.tooth());
    }

    /** Order of the teeth of one side, a primary tooth before the permanent one of its position. */
    private static int fromMidline(int tooth) {
        return 2 * Teeth.position(tooth) - (Teeth.primary(tooth) ? 1 : 0);
    }

    // crowded incisors may stand across the midline, a canine or premolar cannot: its number is wrong
    private static void refuseSwapped(List<Tooth> teeth) {
        String wrong = teeth.stream()
                .filter(t -> Teeth.position(t.tooth()) >= 3 && (t.point().x() > 0) != Teeth.left(t.tooth()))
                .map(t -> Teeth.words(t.tooth()))
                .collect(Collectors.joining(", "));
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException("on the wrong side of the midline: " + wrong);
        }
    }

    /** Distance between the posterior points, mm. */
    public double width() {
        return teeth.get(0).point().distance(teeth.get(teeth.size() - 1).point());
    }

    /** Distance of the foremost point from the line through the posterior points, mm. */
    public double depth() {
        return teeth.stream().mapToDouble(t -> t.point().y()).max().orElseThrow();
    }

    /** Position, 1 to 8, of the tooth at which the arch ends. */
    public int posteriorPosition() {
        return Teeth.position(teeth.get(0).tooth());
    }

    /** The points alone, from right to left. */
    public List<Point> points() {
        return teeth.stream().map(Tooth::point).toList();
    }
}
