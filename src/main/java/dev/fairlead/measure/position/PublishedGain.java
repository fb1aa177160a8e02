package dev.fairlead.measure.position;

/**
 * Perimeter gained by proclining incisors on curves with a fixed intercanine width, as constants of the literature
 * (Mutinelli, Manfredi & Cozzani, Eur J Orthod 2000;22:113-125); no check of an arc computed here, their canine points
 * differ.
 */
public enum PublishedGain {
    PARABOLA(1.51),
    ELLIPSE(1.21),
    HYPERBOLA(1.61),
    CIRCLE(1.21),
    CATENARY(2.07);

    /** The rule of thumb beside them: 2 mm in all for each mm (1 mm each side). */
    public static final double RULE = 2;

    private final double perMm;

    PublishedGain(double perMm) {
        this.perMm = perMm;
    }

    /** mm of perimeter per mm of advancement on the occlusal plane. */
    public double perMm() {
        return perMm;
    }
}
