package dev.fairlead.measure.space;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.working.Say;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Canine and premolar widths of one side by every method that the case allows.
 *
 * <p>All methods that start from the incisor sum miss one child by the same amount, so they share one error source, and
 * it cancels in the spread between them. Left and right share it too: a child whose left teeth are larger than
 * predicted has larger right teeth, so the errors of the sides are taken as fully correlated (they are largely, not
 * wholly).
 */
public final class Predictions {
    /** Standard error of a prediction from the incisor sum, mm per side: Tanaka & Johnston 1974, from memory. */
    public static final double STANDARD_ERROR = 0.85;
    /** The error source that all predictions from the incisor sum share. */
    public static final String CHILD = "prediction from the incisor sum: this child against the line";

    private static final Tooth[] LEFT = {Tooth.of(33), Tooth.of(34), Tooth.of(35)};
    private static final Tooth[] RIGHT = {Tooth.of(43), Tooth.of(44), Tooth.of(45)};

    private Predictions() {}

    /** LI / 2 + 10.5 mm per side (Tanaka & Johnston 1974). */
    public static Measured tanakaJohnston(Measured incisors) {
        return incisors.times(0.5).plus(10.5);
    }

    /** The methods that start from the sum of the four lower incisors, mm; they give both sides the same width. */
    static List<Prediction> fromIncisors(Case c, Measured incisors, boolean words) {
        return List.of(
                Prediction.of(
                        Method.TANAKA_JOHNSTON,
                        withChild(tanakaJohnston(incisors)),
                        words ? Say.num(incisors) + " / 2 + 10.5" : "",
                        "Meant as about the 75th percentile; it predicts too wide more often than too narrow."),
                table(c, incisors, words),
                regression(c, incisors, words));
    }

    /** All methods for one side in their order. */
    static List<Prediction> of(Readings readings, Side side, List<Prediction> fromIncisors, boolean words) {
        return List.of(
                measured(readings, side, words),
                radiograph(readings, side, words),
                fromIncisors.get(0),
                fromIncisors.get(1),
                fromIncisors.get(2));
    }

    private static Prediction measured(Readings readings, Side side, boolean words) {
        Tooth[] t = side == Side.LEFT ? LEFT : RIGHT;
        Measured c = readings.width(t[0]);
        Measured p1 = readings.width(t[1]);
        Measured p2 = readings.width(t[2]);
        return Prediction.of(Method.MEASURED, c.plus(p1).plus(p2), words ? Say.sum(c, p1, p2) : "", "");
    }

    private static Prediction radiograph(Readings readings, Side side, boolean words) {
        if (readings.ofCase().images().isEmpty()) {
            return Prediction.of(Method.RADIOGRAPH, Measured.unknown("/images"), "", "No image widths are recorded.");
        }
        @Nullable Measured sum = null;
        StringBuilder text = new StringBuilder();
        for (Tooth t : side == Side.LEFT ? LEFT : RIGHT) {
            Measured direct = readings.width(t);
            Measured width = direct.known() ? direct : ImageWidths.of(readings, t);
            sum = sum == null ? width : sum.plus(width);
            if (words) {
                text.append(text.isEmpty() ? "" : " + ")
                        .append(Say.num(width))
                        .append(direct.known() ? " (measured)" : " (film)");
            }
        }
        return Prediction.of(
                Method.RADIOGRAPH,
                Objects.requireNonNull(sum),
                text.toString(),
                "A tooth that is turned on the film appears narrower than it is.");
    }

    private static Prediction table(Case c, Measured incisors, boolean words) {
        Measured chosen = c.plan().percentile();
        double percentile = chosen.known() ? chosen.value() : ProbabilityTable.USUAL;
        ProbabilityTable table = ProbabilityTable.table();
        if (incisors.known() && !table.reaches(incisors.value(), percentile)) {
            return Prediction.of(
                    Method.PROBABILITY_TABLE,
                    Measured.notApplicable(),
                    "",
                    words
                            ? "Outside the table, which is printed for " + table.range(percentile)
                                    + "; it is not extrapolated."
                            : "");
        }
        Measured value = incisors.known() ? withChild(table.predict(incisors, percentile)) : incisors;
        return Prediction.of(
                Method.PROBABILITY_TABLE,
                value,
                words ? "LI = " + Say.num(incisors) + ", " + Say.num(percentile) + " %" : "",
                "The table is recalled from memory.");
    }

    private static Prediction regression(Case c, Measured incisors, boolean words) {
        var population = c.child().population();
        var sex = c.child().sex();
        if (!population.known() || !sex.known()) {
            boolean never = !population.applies() || !sex.applies();
            Measured absent = never
                    ? Measured.notApplicable()
                    : Measured.unknown(dev.fairlead.model.Pointers.union(population.missing(), sex.missing()));
            return new Prediction(Method.REGRESSION, absent, "", never ? "No published population applies." : "", "");
        }
        Regressions.Line line = Regressions.of(population.get(), sex.get());
        Measured value = incisors.known()
                ? withChild(incisors.chain(line.intercept() + line.slope() * incisors.value(), line.slope(), Unit.MM))
                : incisors;
        return new Prediction(
                Method.REGRESSION,
                value,
                words ? Say.num(line.intercept()) + " + " + Say.num(line.slope()) + " x " + Say.num(incisors) : "",
                "Its standard error was not published where it was read; 0.85 mm is taken.",
                line.source());
    }

    private static Measured withChild(Measured prediction) {
        return prediction.withError(CHILD, STANDARD_ERROR);
    }
}
