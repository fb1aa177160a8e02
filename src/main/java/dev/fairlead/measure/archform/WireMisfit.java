package dev.fairlead.measure.archform;

/**
 * How far a wire lies from the patient's arch when its midline mark is on the midline and it is slid forward or back
 * until it fits best. Distances at right angles to the wire, mm, positive where the wire lies outside (labially,
 * buccally) of the arch; forward is the slide, mm; shortBy is what the wire lacks at the shorter end, mm, 0 when it
 * reaches both posterior ends.
 */
public record WireMisfit(double rms, Worst worst, double forward, double shortBy) {
    /** The largest distance, where along the arch it is, mm from the midline, and the tooth next to it. */
    public record Worst(double outside, double fromMidline, int tooth) {}

    /** For example "0.8 mm outside the arch near the lower left canine (33)". */
    public String words() {
        return Lengths.mm(Math.abs(worst.outside())) + (worst.outside() < 0 ? " inside" : " outside")
                + " the arch near the " + Teeth.words(worst.tooth());
    }
}
