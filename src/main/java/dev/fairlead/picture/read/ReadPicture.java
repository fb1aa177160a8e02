package dev.fairlead.picture.read;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;

/**
 * A picture that was decoded: pixels and what is needed to measure on them, nothing else of the file.
 *
 * @param spacing mm from pixel to pixel, of a DICOM file that says so
 * @param warnings what a person should look at before the picture is kept
 */
public record ReadPicture(BufferedImage image, Optional<PixelSpacing> spacing, List<String> warnings) {
    public ReadPicture {
        warnings = List.copyOf(warnings);
    }

    /**
     * Distance of pixels (DICOM PS3.3, 10.7).
     *
     * @param row from one row to the next, mm
     * @param column from one column to the next, mm
     * @param meaning whether it is of the receptor, corrected for magnification, or not told
     * @param magnification as the file tells it; empty where it does not
     */
    public record PixelSpacing(double row, double column, Meaning meaning, Optional<Double> magnification) {}

    /** What a pixel spacing is of. */
    public enum Meaning {
        /** In the plane of the receptor: lengths of the head are magnified in it. */
        RECEPTOR,
        /** Of the head itself: magnification was taken out, and is not taken out again. */
        CORRECTED,
        /** Not told. */
        UNKNOWN
    }
}
