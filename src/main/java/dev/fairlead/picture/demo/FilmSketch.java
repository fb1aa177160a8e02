package dev.fairlead.picture.demo;

import dev.fairlead.model.Case;
import dev.fairlead.model.HeadFilm;
import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * The outline of a lateral cephalogram whose points give the angles and lengths of a case again: the face looks towards
 * x, Frankfort horizontal level, porion at the origin, mm.
 */
public final class FilmSketch {
    /**
     * Edge to centre of tipping as a share of edge to apex: the longest that is asked for, so that roots stay short.
     */
    public static final double SHARE = 0.9;

    /** How far the labial face lies in front of the edge, mm. */
    private static final double FACE = 0.8;

    private static final int SMOOTH = 8;
    private static final double SNA = 81;
    private static final double SN = 187;

    private FilmSketch() {}

    /** The film of a case; throws where the case lacks a number that the drawing needs. */
    public static Sketch of(Case c) {
        HeadFilm h = c.headFilm();
        Map<String, double[]> p = new TreeMap<>();
        double plane = -value(h.mandibularPlane());
        p.put("Po", new double[] {0, 0});
        p.put("Or", new double[] {76, 0});
        double[] n = {78, 27};
        p.put("N", n);
        p.put("S", off(n, 68, SN));
        p.put("A", off(n, 55, SN + SNA));
        p.put("B", off(n, 92, SN + SNA - value(h.anb())));
        double[] me = off(p.get("B"), 20, -105);
        p.put("Me", me);
        p.put("Go", off(me, 66, 180 + plane));
        p.put("Pog", off(me, 8, 62));
        double[] a = p.get("A");
        double[] pog = p.get("Pog");
        double[] up = unit(pog, a);
        // in front of the line from pogonion to A is to its right when one looks up along it
        double[] foot = {pog[0] + 25 * up[0], pog[1] + 25 * up[1]};
        double front = value(h.incisorToAPog());
        double[] l1 = {foot[0] + front * up[1], foot[1] - front * up[0]};
        p.put("L1", l1);
        double along = 180 + plane - value(h.incisorMandibular());
        p.put("L1a", off(l1, value(h.tippingRadius()) / SHARE, along + 180));
        double occlusal = plane + value(h.occlusalMandibular());
        // the overjet reaches from the labial face at the height of the upper edge, in front of the lower edge
        double overbite = value(c.bite().overbite());
        double[] face = off(off(l1, overbite, occlusal - 90), FACE, occlusal);
        p.put("L1f", face);
        double[] u1 = off(face, value(c.bite().overjet()), occlusal);
        p.put("U1", u1);
        double[] mid = {(l1[0] + u1[0]) / 2, (l1[1] + u1[1]) / 2};
        p.put("OPi", mid);
        p.put("OPm", off(mid, 34, occlusal + 180));
        return new Sketch(outlines(p, occlusal), p);
    }

    private static double value(Measured m) {
        if (!m.known()) {
            throw new IllegalArgumentException("no film can be drawn of a case without "
                    + (m.missing().isEmpty() ? "its numbers" : m.missing().get(0)));
        }
        return m.value();
    }

    private static double[] off(double[] from, double length, double degrees) {
        double r = Math.toRadians(degrees);
        return new double[] {from[0] + length * Math.cos(r), from[1] + length * Math.sin(r)};
    }

    private static double[] unit(double[] from, double[] to) {
        double l = Math.hypot(to[0] - from[0], to[1] - from[1]);
        return new double[] {(to[0] - from[0]) / l, (to[1] - from[1]) / l};
    }

    private static double[] point(Map<String, double[]> p, String name) {
        return Objects.requireNonNull(p.get(name), name);
    }

    private static List<Sketch.Outline> outlines(Map<String, double[]> p, double occlusal) {
        List<Sketch.Outline> all = new ArrayList<>();
        double[] n = point(p, "N");
        double[] a = point(p, "A");
        double[] b = point(p, "B");
        double[] go = point(p, "Go");
        double[] me = point(p, "Me");
        double[] pog = point(p, "Pog");
        all.add(line(
                "bone", new double[] {n[0] - 3, n[1] + 34}, new double[] {n[0] + 2, n[1] + 14}, n, off(n, 16, -62)));
        all.add(line("bone", off(a, 48, 176), off(a, 12, 150), off(a, 9, 70), a, off(a, 10, -70)));
        all.add(line("bone", off(b, 9, 85), b, pog, me, go, off(go, 20, 118), off(go, 44, 100), off(go, 50, 92)));
        double[] chin = {me[0] - 12, me[1] + 4};
        all.add(line("bone", off(b, 9, 110), off(b, 12, 190), chin, me));
        all.add(round("bone", point(p, "S"), 5));
        all.add(arc("bone", new double[] {point(p, "Or")[0] - 2, 14}, 14, 250, 400));
        all.add(round("bone", new double[] {0, -3.5}, 3.5));
        tooth(all, point(p, "L1"), point(p, "L1a"));
        double[] u1 = point(p, "U1");
        tooth(all, u1, off(u1, 24, occlusal + 114));
        double[] m = point(p, "OPm");
        for (int side = -1; side <= 1; side += 2) {
            double[] c1 = off(m, 5, occlusal);
            double[] c2 = off(m, 5, occlusal + 180);
            double[][] molar = {
                c1,
                off(c1, 6, occlusal + side * 80),
                off(m, 18, occlusal + side * 76),
                off(m, 9, occlusal + side * 90),
                off(m, 18, occlusal + side * 104),
                off(c2, 6, occlusal + side * 100),
                c2
            };
            all.add(new Sketch.Outline("tooth", true, smooth(molar, true)));
        }
        all.add(line(
                "soft",
                new double[] {n[0] + 5, n[1] + 36},
                new double[] {n[0] + 7, n[1] + 4},
                off(n, 38, -58),
                off(a, 15, -5),
                off(point(p, "U1"), 12, 10),
                off(point(p, "L1"), 12, -10),
                off(b, 11, 0),
                off(pog, 12, -5),
                off(me, 9, -80)));
        return all;
    }

    private static Sketch.Outline line(String tone, double[]... at) {
        return new Sketch.Outline(tone, false, smooth(at, false));
    }

    /** A curve through all points (Catmull and Rom 1974), so that every one of them stays on the outline. */
    static double[][] smooth(double[][] at, boolean closed) {
        int n = at.length;
        List<double[]> all = new ArrayList<>();
        for (int i = 0; i + (closed ? 0 : 1) < n; i++) {
            double[] a = closed ? at[(i + n - 1) % n] : at[Math.max(0, i - 1)];
            double[] b = at[i];
            double[] c = at[(i + 1) % n];
            double[] d = closed ? at[(i + 2) % n] : at[Math.min(n - 1, i + 2)];
            for (int k = 0; k < SMOOTH; k++) {
                double t = (double) k / SMOOTH;
                double[] p = new double[2];
                for (int j = 0; j < 2; j++) {
                    double second = 2 * a[j] - 5 * b[j] + 4 * c[j] - d[j];
                    double third = 3 * b[j] - a[j] - 3 * c[j] + d[j];
                    p[j] = 0.5 * (2 * b[j] + t * (c[j] - a[j] + t * (second + t * third)));
                }
                all.add(p);
            }
        }
        if (!closed) {
            all.add(at[n - 1]);
        }
        return all.toArray(double[][]::new);
    }

    private static Sketch.Outline round(String tone, double[] middle, double radius) {
        return new Sketch.Outline(tone, true, arc(tone, middle, radius, 0, 352).at());
    }

    private static Sketch.Outline arc(String tone, double[] middle, double radius, int from, int to) {
        double[][] o = new double[(to - from) / 8 + 1][];
        for (int i = 0; i < o.length; i++) {
            o[i] = off(middle, radius, from + 8.0 * i);
        }
        return new Sketch.Outline(tone, false, o);
    }

    /** A slender tooth with its edge and its apex at the two points. */
    private static void tooth(List<Sketch.Outline> all, double[] edge, double[] apex) {
        double[] u = unit(edge, apex);
        double l = Math.hypot(apex[0] - edge[0], apex[1] - edge[1]);
        double[] across = {-u[1], u[0]};
        double[][] profile = {{0.36, 3.1}, {0.45, 2.9}, {0.8, 1.5}};
        List<double[]> o = new ArrayList<>();
        o.add(edge);
        for (double[] q : profile) {
            o.add(at(edge, u, across, q[0] * l, q[1]));
        }
        o.add(apex);
        for (int i = profile.length - 1; i >= 0; i--) {
            o.add(at(edge, u, across, profile[i][0] * l, -profile[i][1]));
        }
        all.add(new Sketch.Outline("tooth", true, smooth(o.toArray(double[][]::new), true)));
    }

    private static double[] at(double[] from, double[] u, double[] v, double along, double off) {
        return new double[] {from[0] + along * u[0] + off * v[0], from[1] + along * u[1] + off * v[1]};
    }
}
