package dev.fairlead.measure.mechanics;

/**
 * Fineness of the model.
 *
 * @param perBend elements in each bend of a fold
 * @param spacing element length elsewhere, mm
 */
public record Mesh(int perBend, double spacing) {
    /** Fine enough to compare with a converged model: about 400 elements. */
    public static final Mesh FINE = new Mesh(16, 0.25);
    /** For a band of many solutions: about 110 elements, total force within 0.5 % of the fine mesh. */
    public static final Mesh STANDARD = new Mesh(6, 1.0);

    public Mesh {
        if (perBend < 1) {
            throw new IllegalArgumentException("a bend needs at least one element: " + perBend);
        }
        Require.positive("element length", spacing);
    }

    int pieces(double length) {
        return Math.max(1, (int) Math.round(length / spacing));
    }
}
