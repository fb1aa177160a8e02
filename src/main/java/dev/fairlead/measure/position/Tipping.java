package dev.fairlead.measure.position;

/**
 * Tipping of the incisors as a rigid turn about one centre: radius from the centre to the incisal edge, mm, and the
 * forward lean of that line from the perpendicular of the occlusal plane before treatment, degrees. Advancement is
 * measured along that plane.
 */
public record Tipping(double radius, double leanDegrees) {
    /**
     * Degrees per mm, central among published pairs of movement and turn in growing children: 2.8 (Årtun & Grobéty
     * 2001), 2.9 (Weinberg & Sadowsky 1996), 2.5 to 3.6 (Bock, Ruf et al.). Ratios computed from abstracts.
     */
    public static final double DEGREES_PER_MM = 2.9;
    /** The steepest of them. */
    public static final double MOST_DEGREES_PER_MM = 3.6;

    public Tipping {
        if (!(radius > 0) || Double.isInfinite(radius)) {
            throw new IllegalArgumentException(
                    "the edge lies at a positive distance from the centre of tipping, not " + radius);
        }
        if (!(Math.abs(leanDegrees) < 90)) {
            throw new IllegalArgumentException("a lean lies between -90 and 90 degrees, not " + leanDegrees);
        }
    }

    /** Change of inclination after this advancement of the edge, degrees: asin(sin(lean) + a/R) - lean. */
    public double inclinationChange(double advance) {
        return after(advance) - leanDegrees;
    }

    /**
     * How far the edge sinks, mm: R (cos(lean before) - cos(lean after)); negative when an edge that leaned back rises.
     */
    public double edgeDrop(double advance) {
        return radius * (Math.cos(Math.toRadians(leanDegrees)) - Math.cos(Math.toRadians(after(advance))));
    }

    private double after(double advance) {
        double sine = Math.sin(Math.toRadians(leanDegrees)) + advance / radius;
        if (!(Math.abs(sine) <= 1)) {
            throw new IllegalArgumentException(
                    "tipping about a centre " + radius + " mm away cannot move the edge by " + advance + " mm");
        }
        return Math.toDegrees(Math.asin(sine));
    }
}
