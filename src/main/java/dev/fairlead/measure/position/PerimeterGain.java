package dev.fairlead.measure.position;

import dev.fairlead.measure.archform.ArchCurve;

/** Perimeter that an arch gains when its front moves forward and its posterior ends stay. */
public final class PerimeterGain {
    private static final double STEP = 1e-4;

    private PerimeterGain() {}

    /** Gain from this advance of the front, mm, by the length of the deepened curve of the same kind. */
    public static double of(ArchCurve arch, double advance) {
        return deepened(arch, advance).perimeter() - arch.perimeter();
    }

    /** Gain per mm at the present depth, mm per mm. */
    public static double perMm(ArchCurve arch) {
        return (deepened(arch, STEP).perimeter() - deepened(arch, -STEP).perimeter()) / (2 * STEP);
    }

    private static ArchCurve deepened(ArchCurve arch, double advance) {
        return arch.reshaped(arch.width(), arch.depth() + advance);
    }
}
