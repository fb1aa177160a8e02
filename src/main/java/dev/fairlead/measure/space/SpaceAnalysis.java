package dev.fairlead.measure.space;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Space analysis of the lower arch in the mixed dentition. */
public final class SpaceAnalysis {
    private SpaceAnalysis() {}

    /** Analyses a case; {@code words} also makes the texts that workings show. */
    public static SpaceResult of(Readings readings, boolean words) {
        Measured incisors = sum(readings, Tooth.LOWER_INCISORS);
        Measured incisorShortage = incisors.minus(readings.incisorSegment());
        List<Prediction> fromIncisors = Predictions.fromIncisors(readings.ofCase(), incisors, words);
        SideSpace left = side(readings, Side.LEFT, fromIncisors, incisorShortage, words);
        SideSpace right = side(readings, Side.RIGHT, fromIncisors, incisorShortage, words);
        Measured required = incisors.plus(left.required()).plus(right.required());
        Measured segments = right.available().plus(readings.incisorSegment()).plus(left.available());
        Measured available = segments.known() || !readings.perimeter().known() ? segments : readings.perimeter();
        return new SpaceResult(
                incisors,
                left,
                right,
                incisorShortage,
                required,
                available,
                required.minus(available),
                Irregularity.index(readings.ofCase().contacts()),
                new ToothSizeRatio(
                        front(readings, Tooth.LOWER_ANTERIORS),
                        front(readings, Tooth.UPPER_ANTERIORS),
                        ToothSizeRatio.ANTERIOR));
    }

    /** A front of which a tooth has not erupted has no width yet, and nothing is missing for it. */
    private static Measured front(Readings readings, List<Tooth> teeth) {
        boolean whole = teeth.stream()
                .map(readings::tooth)
                .allMatch(t ->
                        t.width().known() || !t.state().known() || t.state().is(ToothState.ERUPTED));
        return whole ? sum(readings, teeth) : Measured.notApplicable();
    }

    private static SideSpace side(
            Readings readings, Side side, List<Prediction> fromIncisors, Measured incisorShortage, boolean words) {
        List<Prediction> methods = Predictions.of(readings, side, fromIncisors, words);
        Prediction chosen = methods.get(Method.TANAKA_JOHNSTON.ordinal());
        for (int i = Method.RADIOGRAPH.ordinal(); i >= 0; i--) {
            chosen = methods.get(i).value().known() ? methods.get(i) : chosen;
        }
        Measured available = readings.segment(side);
        Measured primary = Leeway.primaryWidths(readings, side);
        return new SideSpace(
                side,
                methods,
                chosen,
                available,
                chosen.value().minus(available).plus(incisorShortage.times(0.5)),
                chosen.method() == Method.MEASURED
                        ? Measured.notApplicable()
                        : spread(methods, readings.ofCase().plan().percentile()),
                primary,
                Leeway.of(primary, chosen.value()));
    }

    private static Measured spread(List<Prediction> methods, Measured percentile) {
        @Nullable Measured least = null;
        @Nullable Measured most = null;
        int usable = 0;
        for (Prediction p : methods) {
            Measured v = p.value();
            if (v.known() && p.method() != Method.MEASURED) {
                usable++;
                least = least == null ? v : least.min(v);
                most = most == null ? v : most.max(v);
            }
        }
        // the row of the table decides how far it lies from the other methods: the usual one must not stand in for the
        // one that was read
        boolean row = !percentile.known()
                && !percentile.missing().isEmpty()
                && methods.get(Method.PROBABILITY_TABLE.ordinal()).value().known();
        if (usable > 1 && row) {
            return Measured.unknown(percentile.missing());
        }
        if (usable > 1 && least != null && most != null) {
            return most.minus(least);
        }
        // the incisors open most methods; only when they are known is another way asked for
        Measured simple = methods.get(Method.TANAKA_JOHNSTON.ordinal()).value();
        return !simple.known()
                ? simple
                : Measured.unknown(Pointers.union(
                        methods.get(Method.REGRESSION.ordinal()).value().missing(),
                        methods.get(Method.RADIOGRAPH.ordinal()).value().missing()));
    }

    private static Measured sum(Readings readings, List<Tooth> teeth) {
        Measured sum = readings.width(teeth.get(0));
        for (int i = 1; i < teeth.size(); i++) {
            sum = sum.plus(readings.width(teeth.get(i)));
        }
        return sum;
    }
}
