package dev.fairlead.measure.space;

import dev.fairlead.measure.working.Resource;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Probability table of canine and premolar widths (Moyers 1973, recalled from memory; the figures stand in
 * {@code probability-table.txt}): linear between printed columns and rows, nothing outside them.
 */
public final class ProbabilityTable {
    /** The percentile that is read when a case names none. */
    public static final double USUAL = 75;

    private static final ProbabilityTable TABLE =
            new ProbabilityTable(Resource.read(ProbabilityTable.class, "probability-table.txt"));

    private final double first;
    private final double step;
    private final NavigableMap<Double, double[]> rows = new TreeMap<>();

    private ProbabilityTable(List<Resource.Entry> printed) {
        first = printed.get(0).number("first");
        step = printed.get(0).number("step");
        for (Resource.Entry row : printed) {
            if (row.number("first") != first || row.number("step") != step) {
                throw new IllegalStateException(
                        "all rows of the table begin at the same sum and go on by the same step");
            }
            rows.put(row.number("percentile"), row.numbers("widths"));
        }
    }

    public static ProbabilityTable table() {
        return TABLE;
    }

    /** True when the table has a value for this sum of incisor widths (mm) at this percentile. */
    public boolean reaches(double incisors, double percentile) {
        Double below = rows.floorKey(percentile);
        Double above = rows.ceilingKey(percentile);
        return below != null
                && above != null
                && incisors >= first - Measured.ROUNDING
                && incisors <= Math.min(last(below), last(above)) + Measured.ROUNDING;
    }

    private double[] row(double percentile) {
        return Objects.requireNonNull(rows.get(percentile));
    }

    private double last(double row) {
        return first + step * (row(row).length - 1);
    }

    /** The sums of incisor widths that a percentile is printed for, such as "19.5 to 25 mm". */
    public String range(double percentile) {
        Double below = rows.floorKey(percentile);
        Double above = rows.ceilingKey(percentile);
        return below == null || above == null
                ? "the 5 to 95 % rows"
                : first + " to " + Math.min(last(below), last(above)) + " mm at "
                        + dev.fairlead.measure.working.Say.num(percentile) + " %";
    }

    /** Canine and premolars of one side, mm, from the sum of the incisor widths, mm; throws outside the table. */
    public Measured predict(Measured incisors, double percentile) {
        double x = incisors.value();
        if (!reaches(x, percentile)) {
            throw new IllegalArgumentException("outside the table: " + x + " mm at " + percentile + " %");
        }
        double low = rows.floorKey(percentile);
        double high = rows.ceilingKey(percentile);
        double share = high == low ? 0 : (percentile - low) / (high - low);
        double[] a = row(low);
        double[] b = row(high);
        double at = (x - first) / step;
        int i = Math.max(0, Math.min((int) Math.floor(at + Measured.ROUNDING), Math.min(a.length, b.length) - 2));
        double left = a[i] + share * (b[i] - a[i]);
        double right = a[i + 1] + share * (b[i + 1] - a[i + 1]);
        double slope = (right - left) / step;
        return incisors.chain(left + (at - i) * (right - left), slope, Unit.MM);
    }
}
