package dev.fairlead.measure.mechanics.element;

import org.jspecify.annotations.Nullable;

/**
 * A wire as beam elements of one cross-section from each node to the next, straight or curved, in its unloaded shape.
 */
public final class BeamFrame {
    public final double[] rest;
    public final SectionStiffness section;
    /**
     * Element axes at rest, nine per element, row-major; the columns are the element's own x (along its chord), y and
     * z.
     */
    public final double[] axes;
    /** Chord of each element, mm. */
    public final double[] length;
    /**
     * Elastic stiffness of each element in its own axes, 7 x 7: stretch of the chord, then the rotation vectors of both
     * nodes against it.
     */
    final double[][] stiffness;
    /** Shape of each element; null: straight. */
    private final @Nullable CurvedBeam @Nullable [] bows;

    private @Nullable AtRest rested;

    private BeamFrame(
            double[] rest, SectionStiffness section, double @Nullable [] up, @Nullable CurvedBeam @Nullable [] bows) {
        this.rest = rest;
        this.section = section;
        this.bows = bows;
        int elements = rest.length / 3 - 1;
        axes = new double[9 * elements];
        length = new double[elements];
        stiffness = new double[elements][];
        for (int e = 0; e < elements; e++) {
            layOut(e, up);
            CurvedBeam bow = bow(e);
            stiffness[e] = bow == null ? straight(section, length[e]) : bow.stiffness(section, axes, 9 * e, length[e]);
        }
    }

    /** Straight elements. */
    public static BeamFrame chain(double[] rest, SectionStiffness section) {
        return chain(rest, section, null);
    }

    /**
     * Straight elements.
     *
     * @param rest node positions, three per node, mm
     * @param up direction that lies in every element's local x-z plane; only matters for a section that is not round.
     *     Null: any
     */
    public static BeamFrame chain(double[] rest, SectionStiffness section, double @Nullable [] up) {
        return new BeamFrame(rest, section, up, null);
    }

    /**
     * Curved elements of a round section.
     *
     * @param bows shape of each element; null where it is straight
     */
    public static BeamFrame curved(double[] rest, SectionStiffness section, @Nullable CurvedBeam[] bows) {
        return new BeamFrame(rest, section, null, bows);
    }

    public int nodes() {
        return rest.length / 3;
    }

    public int elements() {
        return length.length;
    }

    /** Shape of an element; null where it is straight. */
    public @Nullable CurvedBeam bow(int e) {
        return bows == null ? null : bows[e];
    }

    /**
     * Tangent stiffness of the unloaded wire, and what was kept of its elements: worked out once for all ways of
     * holding it.
     */
    public record AtRest(double[] own, double[] next, double[] memory) {}

    public AtRest atRest() {
        if (rested == null) {
            var matrix = new ChainMatrix(new boolean[6 * nodes()]);
            var element = new CorotationalElement();
            double[] memory = new double[CorotationalElement.KEPT * elements()];
            FrameState state = FrameState.atRest(this);
            for (int e = 0; e < elements(); e++) {
                element.force(this, e, state);
                element.keep(memory, e);
                element.tangent(this, e, false, null);
                element.stiffness.addTo(matrix, e);
            }
            rested = new AtRest(matrix.own, matrix.next, memory);
        }
        return rested;
    }

    /** Direction of the wire at rest at a share of an element, as a unit vector. */
    public double[] direction(int e, double share) {
        double[] t = new double[3];
        CurvedBeam bow = bow(e);
        if (bow != null) {
            bow.direction(share, t);
            return t;
        }
        // straight elements along a curve meet at a node under an angle that they halve
        int other = bows != null ? e : Math.min(Math.max(e - 1 + 2 * (int) share, 0), elements() - 1);
        for (int k = 0; k < 3; k++) {
            t[k] = axes[9 * e + 3 * k] + axes[9 * other + 3 * k];
        }
        return unit(t);
    }

    /** Place in the wire at rest, mm. */
    public double[] place(int e, double share) {
        double[] p = new double[3];
        CurvedBeam bow = bow(e);
        if (bow != null) {
            bow.place(share, p);
            return p;
        }
        for (int k = 0; k < 3; k++) {
            p[k] = rest[3 * e + k] + share * (rest[3 * e + 3 + k] - rest[3 * e + k]);
        }
        return p;
    }

    private void layOut(int e, double @Nullable [] up) {
        double[] x = new double[3];
        double square = 0;
        for (int k = 0; k < 3; k++) {
            x[k] = rest[3 * e + 3 + k] - rest[3 * e + k];
            square += x[k] * x[k];
        }
        double l = Math.sqrt(square);
        if (!(l > 0)) {
            throw new IllegalArgumentException("element " + e + " has no length");
        }
        length[e] = l;
        x = unit(x);
        double[] y = unit(cross(up == null ? leastAligned(x) : up, x));
        double[] z = cross(x, y);
        for (int i = 0; i < 3; i++) {
            axes[9 * e + 3 * i] = x[i];
            axes[9 * e + 3 * i + 1] = y[i];
            axes[9 * e + 3 * i + 2] = z[i];
        }
    }

    private static double[] straight(SectionStiffness s, double l) {
        double[] k = new double[49];
        k[0] = s.ea() / l;
        for (int a = 1; a < 4; a++) {
            double ei = a == 2 ? s.eiY() : s.eiZ();
            double own = a == 1 ? s.gj() / l : 4 * ei / l;
            double across = a == 1 ? -s.gj() / l : 2 * ei / l;
            k[8 * a] = own;
            k[8 * (a + 3)] = own;
            k[7 * a + a + 3] = across;
            k[7 * (a + 3) + a] = across;
        }
        return k;
    }

    private static double[] leastAligned(double[] x) {
        int k = 0;
        for (int i = 1; i < 3; i++) {
            if (Math.abs(x[i]) < Math.abs(x[k])) {
                k = i;
            }
        }
        double[] axis = new double[3];
        axis[k] = 1;
        return axis;
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] a) {
        double l = Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
        return new double[] {a[0] / l, a[1] / l, a[2] / l};
    }
}
