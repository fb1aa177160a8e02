package dev.fairlead.measure.picture;

import dev.fairlead.model.Unit;

/**
 * A number read on a picture.
 *
 * @param pointer of the field in a case; empty where the case has none for it
 * @param placing one standard deviation that comes of placing the points, in {@code unit}
 * @param scale one standard deviation that comes of the scale, in {@code unit}: shared by all lengths of the picture
 * @param note what a reader should know of it; may be empty
 */
public record PictureValue(
        String pointer, String title, Unit unit, double value, double placing, double scale, String note) {
    /** One standard deviation in all, in {@link #unit()}. */
    public double sd() {
        return Math.sqrt(placing * placing + scale * scale);
    }
}
