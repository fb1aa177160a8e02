package dev.fairlead.measure.picture;

import dev.fairlead.model.Choices.PictureScale;
import java.util.List;
import java.util.Optional;

/**
 * What a picture gives with the points that were placed so far.
 *
 * @param waiting numbers that cannot be told yet, each with the points that are missing
 * @param doubts what looks wrong, or makes the numbers worse than they look
 * @param ownError Dahlberg's error of this hand, one standard deviation of a point along an axis, mm; empty until five
 *     points were placed twice
 * @param scale how the scale was taken; empty without one
 * @param scaleError one standard deviation of the scale, per cent
 */
public record PictureResult(
        List<PictureValue> values,
        List<Waiting> waiting,
        List<String> doubts,
        Optional<Double> ownError,
        Optional<PictureScale> scale,
        double scaleError) {
    /** A number that cannot be told yet. */
    public record Waiting(String title, List<String> points) {}

    public PictureResult {
        values = List.copyOf(values);
        waiting = List.copyOf(waiting);
        doubts = List.copyOf(doubts);
    }
}
