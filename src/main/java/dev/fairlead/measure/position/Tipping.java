package dev.fairlead.measure.position;

/**
 * Tipping of the incisors as a rigid turn about one centre: radius from the centre to the incisal edge, mm, and the
 * forward lean of that line from the perpendicular of the occlusal plane before treatment, degrees. Advancement is
 * measured along that plane.
 */
public record Tipping(double radius, double leanDegrees) {
    /** Rule of thumb, degrees per mm (Tweed and Steiner style, from memory). */
    public static final double RULE_DEGREES_PER_MM = 2.5;

    public Tipping {
        if (!(radius > 0) || Double.isInfinite(radius)) {
            throw new IllegalArgumentException(
                    "the edge lies at a positive distance from the centre of tipping, not " + radius);
        }
        if (!(Math.abs(leanDegrees) < 90)) {
            throw new IllegalArgumentException("a lean lies between -90 and 90 degrees, not " + leanDegrees);
        }
    }

    /** Tipping of upright incisors, for which the inclination changes by asin(a/R). */
    public static Tipping upright(double radius) {
        return new Tipping(radius, 0);
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

    /** Overbite left after this advancement, mm. */
    public double overbiteAfter(double overbite, double advance) {
        return overbite - edgeDrop(advance);
    }

    /** Overjet left after this advancement, mm: the upper incisors stay. */
    public static double overjetAfter(double overjet, double advance) {
        return overjet - advance;
    }

    /** Change of inclination by the rule of 2.5 degrees per mm, degrees. */
    public static double inclinationChangeByRule(double advance) {
        return RULE_DEGREES_PER_MM * advance;
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
