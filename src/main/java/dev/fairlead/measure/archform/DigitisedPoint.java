package dev.fairlead.measure.archform;

/** One digitised point of a lower tooth (ISO 3950 number), mm, in whatever axes the digitiser uses. */
public record DigitisedPoint(int tooth, double x, double y, double z) {

    public DigitisedPoint {
        Teeth.position(tooth);
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw new IllegalArgumentException("coordinates of tooth " + tooth + " must be finite numbers of mm");
        }
    }

    /** A point digitised in a plane picture. */
    public static DigitisedPoint flat(int tooth, double x, double y) {
        return new DigitisedPoint(tooth, x, y, 0);
    }
}
