package dev.fairlead.measure.picture;

import dev.fairlead.model.Choices.PictureScale;
import java.util.List;

/** Makes scales of what was placed or read beside a picture. */
public final class Scales {
    /** Placing of one end of a ruler's length, mm along the length; worked out for a zoomed picture. */
    static final double CLICK_MM = 0.08;

    /** From so far off that a camera is taken to have stood where its distance is not told, mm. */
    static final double USUAL_DISTANCE = 300;

    private static final double LEVELLED = 1;
    private static final double UNLEVELLED = 5;
    /** Printers scale; a frame whose edge was checked by caliper is known to about so much of its edge. */
    private static final double PRINTED = 0.002;

    private static final double ASKED_MAGNIFICATION = 0.01;

    private Scales() {}

    /**
     * A length that was placed by its two ends.
     *
     * @param mm true length
     * @param tooth true where the length is the width of a single tooth
     * @param belowCusps how far below the cusps it lies, mm; negative above, NaN when not told
     * @param distance from camera to cusps, mm; NaN when not told. For a flatbed scan or another picture without
     *     perspective, infinite
     */
    public static PictureScaling knownLength(
            double x1, double y1, double x2, double y2, double mm, boolean tooth, double belowCusps, double distance) {
        double pixels = Math.hypot(x2 - x1, y2 - y1);
        if (!(pixels >= 10)) {
            throw new IllegalArgumentException("the two ends of the length lie upon each other");
        }
        if (!(mm > 0) || mm > 300) {
            throw new IllegalArgumentException("the known length is a number of mm, up to 300");
        }
        double d = Double.isNaN(distance) ? USUAL_DISTANCE : distance;
        double below = Double.isNaN(belowCusps) ? 0 : belowCusps;
        // what lies farther from the camera looks smaller: a ruler below the cusps makes everything at their level
        // large
        double level = Double.isInfinite(d) ? 1 : d / (d + below);
        double ends = Math.sqrt(2) * CLICK_MM / mm;
        double levelError = Double.isInfinite(d) ? 0 : (Double.isNaN(belowCusps) ? UNLEVELLED : LEVELLED) / d;
        double readTooth = tooth ? 0.1 / mm : 0;
        double relative = Math.sqrt(ends * ends + levelError * levelError + readTooth * readTooth);
        double scale = mm / pixels * level;
        return new PictureScaling.Uniform(
                scale, scale, relative, tooth ? PictureScale.SINGLE_TOOTH : PictureScale.KNOWN_LENGTH);
    }

    /**
     * Four corners of a frame in the order upper left, upper right, lower right, lower left.
     *
     * @param width of the frame at the corners, mm
     */
    public static PictureScaling frame(List<PlacedPoint> corners, double width, double height) {
        if (!(width >= 20) || !(height >= 20) || width > 300 || height > 300) {
            throw new IllegalArgumentException("a frame has edges of 20 to 300 mm");
        }
        double ends = Math.sqrt(2) * CLICK_MM / Math.min(width, height);
        return new PictureScaling.Frame(
                Homography.of(corners, width, height), Math.sqrt(ends * ends + PRINTED * PRINTED));
    }

    /**
     * Pixel spacing of a film.
     *
     * @param column mm from one column to the next, in the plane of the receptor unless {@code corrected}
     * @param magnification such as 1.08; 1 where the spacing is corrected for it already
     * @param corrected whether the spacing is that of the head itself
     */
    public static PictureScaling spacing(double column, double row, double magnification, boolean corrected) {
        if (!(magnification >= 1) || magnification > 1.4) {
            throw new IllegalArgumentException("a magnification is a number from 1 to 1.4, such as 1.08 for 8 %");
        }
        double m = corrected ? 1 : magnification;
        return new PictureScaling.Uniform(
                column / m, row / m, corrected ? 0 : ASKED_MAGNIFICATION, PictureScale.PIXEL_SPACING);
    }
}
