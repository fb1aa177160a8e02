package dev.fairlead.measure.mechanics.geometry;

/** Advancement seen as rigid motion: what geometry alone says before any wire is bent. */
public final class RigidMotion {
    private RigidMotion() {}

    /**
     * Labial inclination gained when the incisal edge moves forward by so many mm about a centre R mm away, degrees:
     * asin(a / R).
     */
    public static double inclination(double advance, double radius) {
        return Math.toDegrees(Math.asin(advance / radius));
    }

    /**
     * One fold opened, the wire turning as a whole about the other tube.
     *
     * @param midline forward, mm
     * @param sameSide lateral incisor on the opened side forward, mm
     * @param otherSide the other lateral incisor forward, mm
     * @param transverse front slides away from the opened side, mm
     * @param yawDeg turn of the arch, degrees
     */
    public record OneSided(double midline, double sameSide, double otherSide, double transverse, double yawDeg) {}

    /**
     * x/2 at the midline, x (1/2 ± a/W) at the laterals, x D/W sideways, atan(x/W) of turn.
     *
     * @param opened forward travel of the opened fold, mm
     * @param width between the tubes, mm
     * @param depth of the arch, mm
     * @param lateral transverse distance of a lateral bracket from the midline, mm
     */
    public static OneSided oneSided(double opened, double width, double depth, double lateral) {
        return new OneSided(
                opened / 2,
                opened * (0.5 + lateral / width),
                opened * (0.5 - lateral / width),
                opened * depth / width,
                Math.toDegrees(Math.atan(opened / width)));
    }
}
