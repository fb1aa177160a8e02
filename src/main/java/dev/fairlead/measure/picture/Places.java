package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.Point;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * Places of named points in mm, y up, with the plane on which arch lengths are taken.
 *
 * @param at x, y, z of each point
 * @param first unit vector in the plane
 * @param second unit vector in the plane, across the first
 */
record Places(Map<String, double[]> at, double[] first, double[] second) {
    static final double[] X = {1, 0, 0};
    static final double[] Y = {0, 1, 0};

    boolean has(String name) {
        return at.containsKey(name);
    }

    private double[] place(String name) {
        return Objects.requireNonNull(at.get(name), name);
    }

    Set<String> names() {
        return at.keySet();
    }

    /** The point seen from above the plane. */
    Point flat(String name) {
        double[] p = place(name);
        return new Point(dot(p, first), dot(p, second));
    }

    /** Distance in the plane, mm. */
    double across(String a, String b) {
        return flat(a).distance(flat(b));
    }

    /** Distance in space, mm. */
    double distance(String a, String b) {
        double[] p = place(a);
        double[] q = place(b);
        return Math.sqrt(square(p[0] - q[0]) + square(p[1] - q[1]) + square(p[2] - q[2]));
    }

    /** The same with one point moved within the plane; the plane stays. */
    Places moved(String name, double u, double v) {
        Map<String, double[]> other = new TreeMap<>(at);
        double[] p = place(name).clone();
        Arrays.setAll(p, i -> p[i] + u * first[i] + v * second[i]);
        other.put(name, p);
        return new Places(other, first, second);
    }

    private static double square(double d) {
        return d * d;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
