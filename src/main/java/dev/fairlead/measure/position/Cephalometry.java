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

    /** Inclination compensated for the mandibular plane, degrees: IMPA + (FMA - 25) (Zatarain 2016). */
    public static double adjustedImpa(double impa, double fma) {
        return impa + (fma - FMA_NORM);
    }

    /**
     * Room of both sides used by raising FMIA from present to planned, mm; negative when lowering it gains room
     * (Tweed).
     */
    public static double roomUsed(double presentFmia, double plannedFmia) {
        return TWEED_MM_PER_DEGREE * (plannedFmia - presentFmia);
    }

    /** Proclination, degrees, that yields this much room of both sides by Tweed's correction. */
    public static double proclinationFor(double room) {
        return room / TWEED_MM_PER_DEGREE;
    }

    /**
     * Distance of the lower incisal edge from the A-Pog line after an advancement, mm; angle is that between the
     * direction of advancement (occlusal plane) and the perpendicular of A-Pog, degrees, 0 if taken as parallel.
     */
    public static double toAPogAfter(double before, double advance, double angle) {
        return before + advance * Math.cos(Math.toRadians(angle));
    }
}
