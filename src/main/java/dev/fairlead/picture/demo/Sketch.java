package dev.fairlead.picture.demo;

import java.util.List;
import java.util.Map;

/**
 * Outlines and named points, mm, y up: what a demo picture is drawn of, and the small figures that show where a point
 * lies.
 *
 * @param outlines polygons and lines
 * @param points true places of named points
 */
public record Sketch(List<Outline> outlines, Map<String, double[]> points) {
    /** One outline; {@code tone} names what it is: tooth, bone, soft, line. */
    public record Outline(String tone, boolean closed, double[][] at) {}

    public Sketch {
        outlines = List.copyOf(outlines);
        points = Map.copyOf(points);
    }

    /** Least and greatest x and y of all outlines: x, y, width, height. */
    public double[] bounds() {
        double[] b = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Outline o : outlines) {
            for (double[] p : o.at()) {
                b[0] = Math.min(b[0], p[0]);
                b[1] = Math.min(b[1], p[1]);
                b[2] = Math.max(b[2], p[0]);
                b[3] = Math.max(b[3], p[1]);
            }
        }
        return new double[] {b[0], b[1], b[2] - b[0], b[3] - b[1]};
    }
}
