package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.ArchFamily;
import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.DigitisedPoint;
import dev.fairlead.measure.archform.Landmarks;
import dev.fairlead.measure.archform.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The arch form through the labial points and tubes of a picture, as a case that keeps them as landmarks has it.
 *
 * @param points how many points it rests on
 * @param residual SD of the points from it, mm
 * @param line from the right tube to the left one, mm, in the axes of the points
 */
public record PictureForm(ArchFamily family, int points, double residual, List<Point> line) {
    /** As many as a case asks for. */
    private static final int FEWEST = 5;

    private static final int PIECES = 60;

    public PictureForm {
        line = List.copyOf(line);
    }

    /**
     * The form through named places on the occlusal plane, in any axes; empty where they do not reach from tube to tube
     * over an incisor.
     */
    static Optional<PictureForm> of(Map<String, Point> places) {
        List<DigitisedPoint> given = new ArrayList<>();
        places.forEach((name, p) -> {
            if (name.matches("[LT]\\d\\d")) {
                given.add(new DigitisedPoint(Integer.parseInt(name.substring(1)), p.x(), p.y(), 0));
            }
        });
        boolean incisor = given.stream().anyMatch(p -> p.tooth() % 10 <= 2);
        Point right = places.get("T46");
        Point left = places.get("T36");
        if (given.size() < FEWEST || !incisor || right == null || left == null) {
            return Optional.empty();
        }
        Landmarks normal;
        try {
            normal = Landmarks.of(given);
        } catch (IllegalArgumentException points) {
            // no arch goes through them: what is wrong with single points stands among the doubts
            return Optional.empty();
        }
        ArchFit fit = ArchFit.best(normal);
        Point origin = right.plus(left).times(0.5);
        Point across = left.minus(right).unit();
        Point up = across.quarterTurn();
        double side = 0;
        for (DigitisedPoint p : given) {
            side += new Point(p.x(), p.y()).minus(origin).dot(up);
        }
        Point front = side < 0 ? up.times(-1) : up;
        List<Point> line = fit.curve().points(PIECES).stream()
                .map(p -> origin.plus(across.times(p.x())).plus(front.times(p.y())))
                .toList();
        return Optional.of(new PictureForm(fit.family(), given.size(), fit.residual(normal), line));
    }
}
