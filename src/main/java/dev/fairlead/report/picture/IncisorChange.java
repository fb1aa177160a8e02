package dev.fairlead.report.picture;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.arch.PositionResult.Shift;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One angle or distance of the incisors with the limits in force.
 *
 * @param end the same measured at the end; unknown while it was not, and does not apply where nothing is measured again
 * @param caution the limit that asks for care; where {@link #lower} a value below it does
 * @param stop the limit from which a clinician decides first
 */
record IncisorChange(Shift shift, Measured end, Optional<Limit> caution, Optional<Limit> stop, boolean lower) {
    private static final List<String> CRITERIA = List.of(
            "incisor-inclination-after",
            "incisor-inclination-after",
            "incisor-to-a-pog-after",
            "overjet-after",
            "overbite-after");

    /** All that the report knows, in the order of the analysis. */
    static List<IncisorChange> of(Checked checked, List<Shift> shifts) {
        return java.util.stream.IntStream.range(0, shifts.size())
                .mapToObj(i -> {
                    String criterion = CRITERIA.get(i);
                    return new IncisorChange(
                            shifts.get(i),
                            i == 0 ? checked.subject().holding().incisorMandibular() : Measured.notApplicable(),
                            limit(checked, criterion, "caution")
                                    .or(() -> limit(checked, criterion, "max"))
                                    .or(() -> limit(checked, criterion, "min")),
                            limit(checked, criterion, "stop"),
                            limit(checked, criterion, "min").isPresent());
                })
                .toList();
    }

    private static Optional<Limit> limit(Checked checked, String criterion, String name) {
        return Optional.ofNullable(checked.catalogue().thresholds().get(criterion + "." + name))
                .map(t -> t.limit());
    }

    boolean drawable() {
        return shift.before().known() || shift.after().known();
    }

    double normLow() {
        return shift.norm() - shift.spread();
    }

    double normHigh() {
        return shift.norm() + shift.spread();
    }

    /** Lower and upper end of an axis that shows everything, with some air. */
    double[] axis() {
        double[] all = Stream.of(
                        Stream.of(normLow(), normHigh()),
                        caution.stream().map(Limit::value),
                        stop.stream().map(Limit::value),
                        reach(shift.before()),
                        reach(shift.after()),
                        reach(end))
                .flatMap(s -> s)
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        double air = 0.06 * (all[all.length - 1] - all[0]);
        return new double[] {all[0] - air, all[all.length - 1] + air};
    }

    private static Stream<Double> reach(Measured m) {
        return m.known() ? Stream.of(m.value() - m.sd(), m.value() + m.sd()) : Stream.empty();
    }

    String title() {
        return shift.name().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + shift.name().substring(1);
    }

    String change() {
        return shift.after().known()
                ? Numbers.text(shift.before()) + " → " + Numbers.text(shift.after())
                : Numbers.text(shift.before());
    }

    String norm() {
        return plain(normLow()) + " to " + Numbers.text(normHigh(), shift.unit());
    }

    String limits() {
        String bound = lower ? "at least " : "at most ";
        return caution.map(l -> bound + Numbers.text(l.value(), l.unit())).orElse("none")
                + stop.map(l -> "; stop beyond " + Numbers.text(l.value(), l.unit()))
                        .orElse("");
    }

    List<String> row() {
        return List.of(
                title(),
                Numbers.text(shift.before()),
                Numbers.text(shift.after()),
                end.applies() ? end.known() ? Numbers.text(end) : "not measured" : "–",
                norm(),
                limits());
    }

    private String plain(double v) {
        return Numbers.plain(v, Numbers.decimals(shift.unit()));
    }

    /** An angle in whole or half degrees. */
    static String degrees(double value) {
        return value == Math.rint(value) ? Numbers.plain(value, 0) + "°" : Numbers.text(value, Unit.DEGREE);
    }
}
