package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Choices.PictureScale;
import java.util.Optional;

/**
 * How pixels become mm, and how well: one standard deviation of the scale as a share of a length, common to all lengths
 * of one picture.
 */
public sealed interface PictureScaling {
    /** Place of a pixel in mm, y up. */
    Point place(double x, double y);

    /** The pixel at a place in mm: the inverse of {@link #place}. */
    Point pixel(Point mm);

    /** One standard deviation as a share of a length. */
    double relativeError();

    Optional<PictureScale> kind();

    /** False where only angles can be told. */
    default boolean lengths() {
        return true;
    }

    /** True where a point lies outside what the scale reaches. */
    default boolean outside(double x, double y) {
        return false;
    }

    /** Points that are in mm already, such as those of a scan or table. */
    record Millimetres() implements PictureScaling {
        @Override
        public Point place(double x, double y) {
            return new Point(x, y);
        }

        @Override
        public Point pixel(Point mm) {
            return mm;
        }

        @Override
        public double relativeError() {
            return 0;
        }

        @Override
        public Optional<PictureScale> kind() {
            return Optional.of(PictureScale.MILLIMETRES);
        }
    }

    /** No scale: angles only, of square pixels. */
    record Unknown() implements PictureScaling {
        @Override
        public Point place(double x, double y) {
            return new Point(x, -y);
        }

        @Override
        public Point pixel(Point mm) {
            return new Point(mm.x(), -mm.y());
        }

        @Override
        public double relativeError() {
            return 0;
        }

        @Override
        public Optional<PictureScale> kind() {
            return Optional.empty();
        }

        @Override
        public boolean lengths() {
            return false;
        }
    }

    /**
     * A uniform scale.
     *
     * @param mmPerColumn mm in the object itself across one column
     * @param mmPerRow the same down one row
     */
    record Uniform(double mmPerColumn, double mmPerRow, double relativeError, PictureScale of)
            implements PictureScaling {
        public Uniform {
            if (!(mmPerColumn > 0) || !(mmPerRow > 0) || !(relativeError >= 0) || !(mmPerColumn < 1e3)) {
                throw new IllegalArgumentException("a scale is a positive number of mm for a pixel");
            }
        }

        @Override
        public Point place(double x, double y) {
            return new Point(x * mmPerColumn, -y * mmPerRow);
        }

        @Override
        public Point pixel(Point mm) {
            return new Point(mm.x() / mmPerColumn, -mm.y() / mmPerRow);
        }

        @Override
        public Optional<PictureScale> kind() {
            return Optional.of(of);
        }
    }

    /** Perspective taken out by the four corners of a frame of known size round the arch. */
    record Frame(Homography map, double relativeError) implements PictureScaling {
        @Override
        public Point place(double x, double y) {
            return map.place(x, y);
        }

        @Override
        public Point pixel(Point mm) {
            return map.pixel(mm);
        }

        @Override
        public boolean outside(double x, double y) {
            return map.outside(x, y);
        }

        @Override
        public Optional<PictureScale> kind() {
            return Optional.of(PictureScale.FRAME);
        }
    }
}
