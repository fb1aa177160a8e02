package dev.fairlead.picture.demo;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * A lower arch whose points give the numbers of a case again: x to the patient's left, y to the front, the molar tubes
 * on y 0. Widths, displacements, segments, arch and brackets are met exactly; where the outlines of teeth run is free.
 */
public final class ArchSketch {
    private static final double[] TOOTH_TURN = {-1, 1, 1, 1};
    private static final double[] CONTACT_TURN = {1, -1, -1};
    private static final int[] RIGHT_TO_LEFT = {42, 41, 31, 32};
    private static final String[] CONTACTS = {"42-41", "41-31", "31-32"};
    private static final double SLOT_BEFORE = 1.3;

    private final Case c;
    private final Map<String, double[]> at = new TreeMap<>();
    private final List<Sketch.Outline> outlines = new ArrayList<>();
    private double half;

    private ArchSketch(Case c) {
        this.c = c;
    }

    /** The arch of a case; throws where the case lacks a number that the drawing needs. */
    public static Sketch of(Case c) {
        return new ArchSketch(c).draw();
    }

    private double value(String pointer) {
        Measured m = (Measured) Edit.get(c, pointer);
        if (!m.known()) {
            throw new IllegalArgumentException("no picture can be drawn of a case without " + pointer);
        }
        return m.value();
    }

    private double width(int tooth) {
        return value("/teeth/" + tooth + "/width");
    }

    private Sketch draw() {
        double depth = value("/arch/molarDepth");
        double across = value("/arch/canineWidth");
        double down = value("/arch/canineDepth");
        double radius = (across * across / 4 + down * down) / (2 * down);
        half = value("/space/incisors") / 2 / radius;
        double cy = depth - radius;
        put("I", 0, depth);
        put("D32", radius * Math.sin(half), cy + radius * Math.cos(half));
        put("D42", -radius * Math.sin(half), cy + radius * Math.cos(half));
        double molars = value("/arch/molarWidth") / 2;
        put("T36", molars, 0);
        put("T46", -molars, 0);
        put("L33", across / 2, depth - down);
        put("L43", -across / 2, depth - down);
        molar("M36", "D32", molars - 3.5, value("/space/left"));
        molar("M46", "D42", 3.5 - molars, value("/space/right"));
        incisors();
        canines(value("/space/perimeter"));
        brackets(depth + SLOT_BEFORE);
        behind(36, 1);
        behind(46, -1);
        for (int n : new int[] {43, 42, 41, 31, 32, 33}) {
            tooth(n, n % 10 == 3 ? 7 : 5.6, n / 10 == 3 ? 1 : -1);
        }
        for (int n : new int[] {42, 41, 31, 32}) {
            double[] m = point("M" + n);
            double[] d = point("D" + n);
            double[] u = unit(d, m);
            // from distal to mesial the labial side is on the left hand on the right side of the arch
            double s = n < 40 ? -1 : 1;
            put("E" + n, (m[0] + d[0]) / 2, (m[1] + d[1]) / 2);
            at.put("L" + n, new double[] {(m[0] + d[0]) / 2 - s * u[1] * 2.8, (m[1] + d[1]) / 2 + s * u[0] * 2.8});
        }
        for (int n : new int[] {43, 33}) {
            at.put("E" + n, middle("M" + n, "D" + n));
        }
        return new Sketch(outlines, at);
    }

    private double[] point(String name) {
        return Objects.requireNonNull(at.get(name), name);
    }

    private void put(String name, double x, double y) {
        at.put(name, new double[] {x, y});
    }

    private void molar(String name, String lateral, double x, double space) {
        double[] l = point(lateral);
        double dx = x - l[0];
        put(name, x, l[1] - Math.sqrt(space * space - dx * dx));
    }

    private static double[] unit(double[] from, double[] to) {
        double dx = to[0] - from[0];
        double dy = to[1] - from[1];
        double l = Math.hypot(dx, dy);
        return new double[] {dx / l, dy / l};
    }

    // ---- incisors: turned and displaced so that their chain closes between the distal contacts of the laterals ----

    private void incisors() {
        double[] end = point("D32");
        double t = 0.1;
        double s = 0;
        for (int i = 0; i < 50; i++) {
            double[] f = miss(t, s, end);
            double h = 1e-6;
            double[] ft = miss(t + h, s, end);
            double[] fs = miss(t, s + h, end);
            double a = (ft[0] - f[0]) / h;
            double b = (fs[0] - f[0]) / h;
            double d = (ft[1] - f[1]) / h;
            double e = (fs[1] - f[1]) / h;
            double det = a * e - b * d;
            t -= (f[0] * e - f[1] * b) / det;
            s -= (a * f[1] - d * f[0]) / det;
        }
        List<double[]> chain = chain(t, s);
        if (!(Math.hypot(miss(t, s, end)[0], miss(t, s, end)[1]) < 1e-6)) {
            throw new IllegalArgumentException("the incisors of this case do not fit between their neighbours");
        }
        String[] names = {"M42", "D41", "M41", "M31", "D31", "M32"};
        for (int i = 0; i < names.length; i++) {
            at.put(names[i], chain.get(i));
        }
    }

    private double[] miss(double t, double s, double[] end) {
        double[] last = chain(t, s).get(6);
        return new double[] {last[0] - end[0], last[1] - end[1]};
    }

    private List<double[]> chain(double turn, double contact) {
        double total = 0;
        for (int n : RIGHT_TO_LEFT) {
            total += width(n);
        }
        List<double[]> all = new ArrayList<>();
        double[] p = point("D42");
        double gone = 0;
        for (int i = 0; i < RIGHT_TO_LEFT.length; i++) {
            double w = width(RIGHT_TO_LEFT[i]);
            double middle = half * (2 * (gone + w / 2) / total - 1);
            gone += w;
            p = off(p, w, TOOTH_TURN[i] * turn - middle);
            all.add(p);
            if (i < CONTACTS.length) {
                double place = half * (2 * gone / total - 1);
                p = off(p, value("/contacts/" + CONTACTS[i]), CONTACT_TURN[i] * Math.PI / 2 + contact - place);
                all.add(p);
            }
        }
        return all;
    }

    private static double[] off(double[] p, double length, double angle) {
        return new double[] {p[0] + length * Math.cos(angle), p[1] + length * Math.sin(angle)};
    }

    // ---- canines: displaced as their contacts say, and bulging so far that the whole arch has its length ----

    private void canines(double perimeter) {
        double low = 0;
        double high = Math.toRadians(60);
        for (int i = 0; i < 80; i++) {
            double bulge = (low + high) / 2;
            canine("33", "D32", "M36", 1, bulge, value("/contacts/32-33"));
            canine("43", "D42", "M46", -1, bulge, -value("/contacts/43-42"));
            if (length() < perimeter) {
                low = bulge;
            } else {
                high = bulge;
            }
        }
        if (Math.abs(length() - perimeter) > 1e-6) {
            throw new IllegalArgumentException("the segments of this case do not fit its whole arch");
        }
    }

    private void canine(String tooth, String lateral, String molar, int side, double bulge, double displaced) {
        double[] l = point(lateral);
        double[] u = unit(l, point(molar));
        double[] out = {-side * u[1], side * u[0]};
        double[] m = {l[0] + displaced * out[0], l[1] + displaced * out[1]};
        double cos = Math.cos(bulge);
        double sin = Math.sin(bulge);
        double w = width(Integer.parseInt(tooth));
        at.put("M" + tooth, m);
        put("D" + tooth, m[0] + w * (u[0] * cos + out[0] * sin), m[1] + w * (u[1] * cos + out[1] * sin));
    }

    /** As the whole arch is measured: chords, and between the canines' contacts a circle. */
    private double length() {
        double[] r = middle("M43", "D42");
        double[] l = middle("M33", "D32");
        double[] i = point("I");
        double ab = distance(r, i);
        double bc = distance(i, l);
        double ac = distance(r, l);
        double area2 = Math.abs((i[0] - r[0]) * (l[1] - r[1]) - (i[1] - r[1]) * (l[0] - r[0]));
        double d = ab * bc * ac / area2;
        return distance(point("M46"), point("D43"))
                + distance(point("D43"), r)
                + d * (Math.asin(ab / d) + Math.asin(bc / d))
                + distance(l, point("D33"))
                + distance(point("D33"), point("M36"));
    }

    private double[] middle(String a, String b) {
        return new double[] {(point(a)[0] + point(b)[0]) / 2, (point(a)[1] + point(b)[1]) / 2};
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    private void brackets(double y) {
        double right = value("/hardware/brackets/41/fromMidline");
        double left = value("/hardware/brackets/31/fromMidline");
        put("B41", -right, y);
        put("B31", left, y);
        double to42 = value("/hardware/brackets/42/fromMidline") - right;
        double to32 = value("/hardware/brackets/32/fromMidline") - left;
        put("B42", -right - to42 * 0.8, y - to42 * 0.6);
        put("B32", left + to32 * 0.8, y - to32 * 0.6);
    }

    /** A first molar behind its mesial contact. */
    private void behind(int tooth, int side) {
        double[] m = point("M" + tooth);
        double[] back = {m[0] + side * 0.8, m[1] - Math.sqrt(Math.pow(width(tooth), 2) - 0.64)};
        at.put("D" + tooth, back);
        tooth(tooth, 10.5, side);
    }

    /** A rounded outline through both contacts. */
    private void tooth(int n, double thick, int side) {
        double[] m = point("M" + n);
        double[] d = point("D" + n);
        double[] u = unit(m, d);
        double w = distance(m, d) / 2;
        double[][] o = new double[48][];
        for (int i = 0; i < o.length; i++) {
            double a = 2 * Math.PI * i / o.length;
            double along = w * Math.cos(a);
            double off = side * thick / 2 * Math.signum(Math.sin(a)) * Math.pow(Math.abs(Math.sin(a)), 0.8);
            o[i] = new double[] {
                (m[0] + d[0]) / 2 + along * u[0] - off * u[1], (m[1] + d[1]) / 2 + along * u[1] + off * u[0]
            };
        }
        outlines.add(new Sketch.Outline("tooth", true, o));
    }
}
