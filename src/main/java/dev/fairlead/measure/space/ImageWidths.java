package dev.fairlead.measure.space;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.ToothImage;
import dev.fairlead.model.Unit;

/**
 * True widths of unerupted teeth from a film, corrected for magnification by a tooth beside them (Huckaba 1964; ratio
 * from memory).
 */
public final class ImageWidths {
    private ImageWidths() {}

    /** Image width x true width of the reference / image width of the reference, mm. */
    public static Measured corrected(Measured image, Measured referenceTrue, Measured referenceImage) {
        if (image.known() && referenceTrue.known() && referenceImage.known()) {
            double i = image.value();
            double t = referenceTrue.value();
            double r = referenceImage.value();
            return image.chain(i * t / r, t / r, Unit.MM)
                    .plus(referenceTrue.chain(0, i / r, Unit.MM))
                    .plus(referenceImage.chain(0, -i * t / (r * r), Unit.MM));
        }
        return image.plus(referenceTrue).plus(referenceImage);
    }

    /** The width of an unerupted tooth, mm, from the first image of it that can be used. */
    static Measured of(Readings readings, Tooth tooth) {
        Measured best = null;
        for (ToothImage image : readings.ofCase().images()) {
            if (image.tooth().is(tooth)) {
                Measured referenceTrue = image.reference().known()
                        ? readings.width(image.reference().get())
                        : Measured.unknown(image.reference().missing());
                Measured width = corrected(image.imageWidth(), referenceTrue, image.referenceImageWidth());
                if (width.known()) {
                    return width;
                }
                best = best == null ? width : best;
            }
        }
        return best != null ? best : readings.width(tooth);
    }
}
