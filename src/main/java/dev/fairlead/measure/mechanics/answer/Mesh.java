package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.geometry.Require;

/**
 * Fineness of the model.
 *
 * @param perBend elements in each bend of a fold
 * @param spacing element length elsewhere, mm
 * @param curved whether elements follow the curve of the wire; else they are straight from node to node
 */
public record Mesh(int perBend, double spacing, boolean curved) {
    /** Straight elements, fine enough to compare with a converged model: about 400. */
    public static final Mesh FINE = new Mesh(16, 0.25);
    /**
     * Curved elements, some forty: forces and stresses within 0.1 % of a mesh of straight ones as fine as they need to
     * be.
     */
    public static final Mesh STANDARD = new Mesh(2, 3, true);

    public Mesh {
        if (perBend < 1) {
            throw new IllegalArgumentException("a bend needs at least one element: " + perBend);
        }
        Require.positive("element length", spacing);
    }

    /** Straight elements. */
    public Mesh(int perBend, double spacing) {
        this(perBend, spacing, false);
    }

    int pieces(double length) {
        return Math.max(1, (int) Math.round(length / spacing));
    }
}
