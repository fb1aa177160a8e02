package dev.fairlead.model;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A landmark that lies farther from the one beside it than teeth are wide: a slip of a digit, a sign or a number, of
 * which a curve through the points would make an arch that nobody has.
 *
 * @param index its number in the list of landmarks
 * @param beside the one beside it in the row of teeth
 * @param distance how far apart they lie, mm
 */
public record StrayLandmark(int index, Landmark beside, double distance) {
    /**
     * From one place in the row of lower teeth to the next, mm. The widest of them, first molars and second primary
     * molars, measure 9 to 12.5 (means of 10 to 11 with a spread of 0.7, Moyers et al. 1976, from memory), and points
     * of neighbours lie a mean width apart: what goes beyond 15 is no crowding.
     */
    private static final double FARTHEST = 15;

    /** Those among the lower teeth whose place was measured, each once. */
    public static List<StrayLandmark> among(List<Landmark> all) {
        if (all.isEmpty()) {
            return List.of();
        }
        List<Landmark> row = all.stream()
                .filter(l -> l.tooth().known() && l.tooth().get().lower() && l.x().known() && l.y().known())
                .sorted(Comparator.comparingInt(StrayLandmark::place))
                .toList();
        Map<Landmark, Landmark> strays = new LinkedHashMap<>();
        for (int i = 1; i < row.size() - 1; i++) {
            if (far(row, i - 1) && far(row, i)) {
                strays.put(row.get(i), row.get(i - 1));
            }
        }
        // of two that lie apart, of which neither is far from both of its own neighbours, the outer one
        double x = middle(row, Landmark::x);
        double y = middle(row, Landmark::y);
        for (int i = 0; i < row.size() - 1; i++) {
            Landmark a = row.get(i);
            Landmark b = row.get(i + 1);
            if (far(row, i) && !strays.containsKey(a) && !strays.containsKey(b)) {
                boolean first = from(x, y, a) > from(x, y, b);
                strays.put(first ? a : b, first ? b : a);
            }
        }
        return strays.entrySet().stream()
                .map(e -> new StrayLandmark(
                        all.indexOf(e.getKey()),
                        e.getValue(),
                        from(e.getKey().x().value(), e.getKey().y().value(), e.getValue())))
                .toList();
    }

    /** Whether the point with that number and the next lie too far apart. */
    private static boolean far(List<Landmark> row, int i) {
        Landmark a = row.get(i);
        Landmark b = row.get(i + 1);
        return from(a.x().value(), a.y().value(), b) > FARTHEST * Math.max(1, place(b) - place(a));
    }

    /** Place in the row, which grows from the right third molar to the left one without a gap at the midline. */
    private static int place(Landmark l) {
        Tooth tooth = l.tooth().get();
        return tooth.side() == Side.LEFT ? tooth.position() - 1 : -tooth.position();
    }

    private static double middle(List<Landmark> row, Function<Landmark, Measured> of) {
        return row.stream()
                .mapToDouble(l -> of.apply(l).value())
                .sorted()
                .skip(row.size() / 2)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static double from(double x, double y, Landmark l) {
        return Math.hypot(l.x().value() - x, l.y().value() - y);
    }
}
