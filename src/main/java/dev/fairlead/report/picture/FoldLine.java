package dev.fairlead.report.picture;

import dev.fairlead.drawing.Svg.At;
import dev.fairlead.measure.mechanics.geometry.FoldKinematics;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * The middle of a folded wire in the fold's own plane, mm: x forward from the mesial end of the tube, y away from the
 * tube.
 */
final class FoldLine {
    private static final int PIECES = 24;

    private final List<At> points = new ArrayList<>();
    private double x;
    private double y;

    private FoldLine() {}

    /** Tail in the tube, both bends opened by {@code alpha} radians, and some of the run in front. */
    static List<At> of(FoldSpec fold, double tube, double run, double alpha) {
        FoldLine line = new FoldLine();
        double r = FoldKinematics.openedRadius(fold, alpha);
        line.points.add(new At(-tube, 0));
        line.points.add(new At(0, 0));
        line.bend(r, 0, Math.PI - alpha);
        line.straight(fold.leg(), Math.PI - alpha);
        line.bend(r, Math.PI - alpha, alpha - Math.PI);
        line.straight(fold.leg3() + run, 0);
        return List.copyOf(line.points);
    }

    private void straight(double length, double heading) {
        x += length * Math.cos(heading);
        y += length * Math.sin(heading);
        points.add(new At(x, y));
    }

    private void bend(double r, double heading, double turn) {
        double sign = Math.signum(turn);
        double cx = x - sign * r * Math.sin(heading);
        double cy = y + sign * r * Math.cos(heading);
        for (int i = 1; i <= PIECES; i++) {
            double a = heading + turn * i / PIECES;
            x = cx + sign * r * Math.sin(a);
            y = cy - sign * r * Math.cos(a);
            points.add(new At(x, y));
        }
    }
}
