package dev.fairlead.measure.picture;

import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A number that named points give.
 *
 * @param pointer of the field in a case; empty where the case has none for it
 * @param needs names of the points
 * @param formula of the points in mm, in {@code unit}
 * @param assumed one standard deviation of a single placing as long as nothing was placed twice, without scale
 * @param note what a reader should know of it; may be empty
 */
record Quantity(
        String pointer,
        String title,
        Unit unit,
        List<String> needs,
        ToDoubleFunction<Places> formula,
        double assumed,
        String note) {
    Quantity {
        needs = List.copyOf(needs);
    }

    List<String> missing(Places places) {
        List<String> missing = new ArrayList<>(needs);
        missing.removeIf(places::has);
        return missing;
    }

    /**
     * One standard deviation from the errors of its points by first-order propagation (JCGM 100:2008, 5.1.2), points
     * taken as independent.
     *
     * @param error one standard deviation of a point along each axis of the plane, mm
     */
    double propagated(Places places, Errors error) {
        double sum = 0;
        for (String name : needs) {
            double sx = error.x(name);
            double sy = error.y(name);
            sum += square(slope(places, name, sx, 0)) + square(slope(places, name, 0, sy));
        }
        return Math.sqrt(sum);
    }

    private double slope(Places places, String name, double u, double v) {
        return (formula.applyAsDouble(places.moved(name, u, v)) - formula.applyAsDouble(places.moved(name, -u, -v)))
                / 2;
    }

    private static double square(double d) {
        return d * d;
    }

    /** Errors of placing by point, one standard deviation in mm. */
    interface Errors {
        double x(String name);

        double y(String name);
    }
}
