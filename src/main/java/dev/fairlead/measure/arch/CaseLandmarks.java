package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.DigitisedPoint;
import dev.fairlead.measure.archform.Landmarks;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.archform.Teeth;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.LandmarkPoint;
import dev.fairlead.model.Measured;
import dev.fairlead.model.StrayLandmark;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.Optional;

/**
 * The landmarks of a case from first molar to first molar, and the same in normal position.
 *
 * @param given the readings that are used
 * @param normal their points in normal position, in the order of {@link Landmarks}
 */
record CaseLandmarks(List<dev.fairlead.model.Landmark> given, Landmarks normal) {
    private static final int FIRST_MOLAR = 6;
    private static final int INCISOR = 2;
    /** Fewer points cannot tell one form from another. */
    private static final int FEWEST = 5;

    /** Why landmarks are not used, or the landmarks. */
    record Found(Optional<CaseLandmarks> landmarks, String why) {}

    /**
     * Landmarks that reach from 46 to 36 with an incisor between; incomplete ones and those behind the first molars are
     * passed over.
     */
    static Found of(Case c) {
        if (c.landmarks().isEmpty()) {
            return new Found(Optional.empty(), "");
        }
        List<dev.fairlead.model.Landmark> given =
                c.landmarks().stream().filter(CaseLandmarks::complete).toList();
        if (given.size() < FEWEST
                || !has(given, 36)
                || !has(given, 46)
                || given.stream().noneMatch(l -> Teeth.position(number(l)) <= INCISOR)) {
            return new Found(
                    Optional.empty(),
                    "The landmarks do not reach from 46 over an incisor to 36 with at least " + FEWEST
                            + " complete points; they are not used.");
        }
        List<StrayLandmark> strays = StrayLandmark.among(given);
        if (!strays.isEmpty()) {
            StrayLandmark s = strays.get(0);
            return new Found(
                    Optional.empty(),
                    "The landmarks are not used: that of " + Teeth.words(number(given.get(s.index())))
                            + " lies farther from that of "
                            + Teeth.words(number(s.beside())) + " than teeth are wide.");
        }
        boolean flat = given.stream().anyMatch(l -> !l.z().known());
        try {
            Landmarks normal = Landmarks.of(given.stream()
                    .map(l -> new DigitisedPoint(number(l), l.x().value(), l.y().value(), flat ? 0 : l.z().value()))
                    .toList());
            return new Found(Optional.of(new CaseLandmarks(given, normal)), "");
        } catch (IllegalArgumentException e) {
            return new Found(Optional.empty(), "The landmarks are not used: " + e.getMessage() + ".");
        }
    }

    private static boolean complete(dev.fairlead.model.Landmark l) {
        return l.tooth().known()
                && onTheForm(l)
                && Teeth.lower(number(l))
                && Teeth.position(number(l)) <= FIRST_MOLAR
                && l.x().known()
                && l.y().known();
    }

    /** Contact points, slots and cusps lie beside the curve that the labial points lie on. */
    private static boolean onTheForm(dev.fairlead.model.Landmark l) {
        return !l.point().known()
                || l.point().is(LandmarkPoint.LABIAL)
                || l.point().is(LandmarkPoint.TUBE);
    }

    private static boolean has(List<dev.fairlead.model.Landmark> given, int tooth) {
        return given.stream().anyMatch(l -> number(l) == tooth);
    }

    private static int number(dev.fairlead.model.Landmark l) {
        return l.tooth().get().number();
    }

    /**
     * A number that was read off the landmarks, with the errors of their coordinates; slopes are given for each
     * landmark in normal position. A set that is tilted in space is taken as seen from above.
     */
    Measured measured(double value, Unit unit, List<Point> slopes) {
        Point across = at(36).minus(at(46)).unit();
        Point forward = across.quarterTurn();
        Measured sum = Measured.exact(value, unit);
        for (int i = 0; i < normal.teeth().size(); i++) {
            int tooth = normal.teeth().get(i).tooth();
            dev.fairlead.model.Landmark l =
                    given.stream().filter(g -> number(g) == tooth).findFirst().orElseThrow();
            Point slope = across.times(slopes.get(i).x())
                    .plus(forward.times(slopes.get(i).y()));
            sum = sum.plus(l.x().chain(0, slope.x(), unit)).plus(l.y().chain(0, slope.y(), unit));
        }
        return sum;
    }

    private Point at(int tooth) {
        dev.fairlead.model.Landmark l =
                given.stream().filter(g -> number(g) == tooth).findFirst().orElseThrow();
        return new Point(l.x().value(), l.y().value());
    }
}
