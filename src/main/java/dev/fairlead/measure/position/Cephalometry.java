package dev.fairlead.measure.position;

/** Arithmetic of the lateral head film around the lower incisor, degrees and mm. */
public final class Cephalometry {
    /** Room of both sides per degree of FMIA, mm (Tweed's head-plate correction, read in secondary texts). */
    public static final double TWEED_MM_PER_DEGREE = 0.8;
    /** Mandibular plane angle for which no compensation is made, degrees. */
    public static final double FMA_NORM = 25;

    private static final double TRIANGLE = 180;

    private Cephalometry() {}

    /** Third angle of Tweed's triangle, degrees: FMIA = 180 - FMA - IMPA. */
    public static double fmia(double fma, double impa) {
        return TRIANGLE - fma - impa;
    }
}
