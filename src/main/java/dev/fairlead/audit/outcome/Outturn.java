package dev.fairlead.audit.outcome;

import dev.fairlead.audit.statistics.Deviations;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Whether it came out as planned, over all cases that reached holding.
 *
 * @param cases how many of them tell anything
 * @param lines one for each kind of number of which something is known
 * @param own what the clinic's own cases show of each parameter; empty where nothing is known
 */
public record Outturn(int cases, List<Line> lines, Map<Attained.Kind, Parameter> own) {
    /** Residents with fewer cases are shown without intervals. */
    public static final int FEWEST = 5;
    /** Residents beyond this are not told apart. */
    private static final int MOST_RESIDENTS = 5_000;

    public static final Outturn NONE = new Outturn(0, List.of(), Map.of());

    /**
     * One kind of number.
     *
     * @param difference achieved less predicted, in its unit
     * @param standardised the same over the standard deviation that was stated
     * @param within95 within the stated 95 % interval
     * @param within50 within the stated 50 % interval
     * @param tenths how many in each tenth of the stated distribution
     * @param points mean achieved by class of predicted values
     * @param residents by code
     */
    public record Line(
            Attained.Kind kind,
            Deviations difference,
            Deviations standardised,
            Deviations.Covered within95,
            Deviations.Covered within50,
            int[] tenths,
            List<Point> points,
            List<OfResident> residents) {}

    /** Cases of about the same prediction: mean predicted, and achieved with its interval. */
    public record Point(double predicted, Deviations achieved) {}

    /** One resident's cases: difference in its unit. */
    public record OfResident(String name, Deviations difference) {}

    /**
     * What a clinic's cases show of one parameter.
     *
     * @param sd between cases, the errors of reading taken out
     * @param worth how many values read without error would tell the spread as well
     */
    public record Parameter(int n, double mean, double sd, double worth) {}

    /** Adds up cases as they come, in room that does not grow with them. */
    public static final class Counter {
        private static final class OfKind {
            private final Deviations.Sums difference = new Deviations.Sums();
            private final Deviations.Sums standardised = new Deviations.Sums();
            private final Map<Long, Deviations.Sums> achieved = new TreeMap<>();
            private final Map<Long, Deviations.Sums> predicted = new TreeMap<>();
            private final Map<String, Deviations.Sums> residents = new TreeMap<>();
            private double errors;
        }

        private final Map<Attained.Kind, OfKind> kinds = new EnumMap<>(Attained.Kind.class);
        private int cases;

        public void add(String resident, List<Attained> all) {
            cases += all.stream().anyMatch(a -> a.kind().told()) ? 1 : 0;
            for (Attained a : all) {
                OfKind k = kinds.computeIfAbsent(a.kind(), x -> new OfKind());
                // of a parameter the value itself is followed, of a prediction how far it was off
                k.difference.add(a.kind().told() ? a.difference() : a.achieved());
                k.errors += a.error() * a.error();
                if (a.kind().told()) {
                    if (Double.isFinite(a.standardised())) {
                        k.standardised.addStandardised(a.standardised());
                    }
                    long at = Math.round(a.predicted() / a.kind().step());
                    k.achieved.computeIfAbsent(at, x -> new Deviations.Sums()).add(a.achieved());
                    k.predicted.computeIfAbsent(at, x -> new Deviations.Sums()).add(a.predicted());
                    if (!resident.isEmpty()
                            && (k.residents.size() < MOST_RESIDENTS || k.residents.containsKey(resident))) {
                        k.residents
                                .computeIfAbsent(resident, x -> new Deviations.Sums())
                                .add(a.difference());
                    }
                }
            }
        }

        public Outturn outturn() {
            List<Line> lines = new ArrayList<>();
            Map<Attained.Kind, Parameter> own = new EnumMap<>(Attained.Kind.class);
            kinds.forEach((kind, k) -> {
                if (kind.told()) {
                    lines.add(line(kind, k));
                } else {
                    own.put(kind, parameter(k));
                }
            });
            return new Outturn(cases, lines, own);
        }

        private static Line line(Attained.Kind kind, OfKind k) {
            List<Point> points = new ArrayList<>();
            k.achieved.forEach((at, sums) -> points.add(new Point(
                    Objects.requireNonNull(k.predicted.get(at)).deviations().bias(), sums.deviations())));
            return new Line(
                    kind,
                    k.difference.deviations(),
                    k.standardised.deviations(),
                    k.standardised.covered(95),
                    k.standardised.covered(50),
                    k.standardised.tenths(),
                    points,
                    k.residents.entrySet().stream()
                            .map(r -> new OfResident(r.getKey(), r.getValue().deviations()))
                            .toList());
        }

        /** The variance of what was read less that of reading is the cases' own. */
        private static Parameter parameter(OfKind k) {
            Deviations d = k.difference.deviations();
            double between = d.n() < 2 ? 0 : Math.max(0, d.spread() * d.spread() - k.errors / d.n());
            double reliable = between > 0 ? between / (between + k.errors / d.n()) : 0;
            return new Parameter(d.n(), d.bias(), Math.sqrt(between), d.n() * reliable * reliable);
        }
    }
}
