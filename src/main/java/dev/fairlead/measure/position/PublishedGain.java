package dev.fairlead.measure.position;

import java.util.Arrays;

/**
 * Perimeter gained by proclining incisors on curves with a fixed intercanine width, as constants of the literature
 * (Mutinelli, Manfredi & Cozzani, Eur J Orthod 2000;22:113-125); no check of an arc computed here, their canine points
 * differ.
 */
public enum PublishedGain {
    PARABOLA(1.51, 0.54, 0.43),
    ELLIPSE(1.21, 0.43, 0.34),
    HYPERBOLA(1.61, 0.57, 0.46),
    CIRCLE(1.21, 0.43, 0.34),
    CATENARY(2.07, 0.74, 0.59);

    /** The rule of thumb beside them: 2 mm in all for each mm (1 mm each side). */
    public static final double RULE = 2;

    private final double perMm;
    private final double perDegreeControlled;
    private final double perDegreeUncontrolled;

    PublishedGain(double perMm, double perDegreeControlled, double perDegreeUncontrolled) {
        this.perMm = perMm;
        this.perDegreeControlled = perDegreeControlled;
        this.perDegreeUncontrolled = perDegreeUncontrolled;
    }

    /** mm of perimeter per mm of advancement on the occlusal plane. */
    public double perMm() {
        return perMm;
    }

    /** mm of perimeter per degree of controlled tipping. */
    public double perDegreeControlled() {
        return perDegreeControlled;
    }

    /** mm of perimeter per degree of uncontrolled tipping. */
    public double perDegreeUncontrolled() {
        return perDegreeUncontrolled;
    }

    /** Smallest published gain, mm per mm. */
    public static double lowest() {
        return Arrays.stream(values()).mapToDouble(PublishedGain::perMm).min().orElseThrow();
    }

    /** Largest published gain, mm per mm. */
    public static double highest() {
        return Arrays.stream(values()).mapToDouble(PublishedGain::perMm).max().orElseThrow();
    }
}
