package dev.fairlead.measure.schedule;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Sex;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When one primary tooth of this child is likely to be shed: the leeway of a side starts to be lost when its second
 * primary molar goes, because the first molar then drifts forward.
 *
 * @param stands whether the tooth stood on the day of the records
 * @param row the table row; empty while sex is unknown
 * @param seen day of the records, on which the age was taken
 * @param age age on that day, years
 * @param date likely dates, given that the tooth stood on the day of the records; empty when it did not or something is
 *     missing
 * @param missing JSON Pointers of what would tell more
 */
public record Shedding(
        PrimaryTooth tooth,
        Side side,
        Answer stands,
        Optional<Exfoliation> row,
        Optional<LocalDate> seen,
        double age,
        Optional<ExpectedRange<LocalDate>> date,
        List<String> missing) {
    private static final double DAYS_PER_YEAR = 365.2425;

    public Shedding {
        missing = List.copyOf(missing);
    }

    /** The outlook of one tooth; {@code day} stands for the day of the records where no film or model is dated. */
    static Shedding of(Case c, PrimaryTooth tooth, Side side, Fact<LocalDate> day) {
        Answer stands = stands(c, tooth, side);
        Fact<LocalDate> seen = c.films().models().known()
                ? c.films().models()
                : c.films().headFilm().known() ? c.films().headFilm() : day;
        Fact<Sex> sex = c.child().sex();
        List<String> missing = new ArrayList<>(
                Pointers.union(stands.missing(), Pointers.union(c.child().age().missing(), sex.missing())));
        if (!seen.known()) {
            missing.add("/films/models");
        }
        Optional<Exfoliation> row = sex.value().map(s -> Exfoliation.of(tooth, s));
        double age = c.child().age().known() ? c.child().age().value() : Double.NaN;
        Optional<ExpectedRange<LocalDate>> date =
                missing.isEmpty() && stands.yes() && row.isPresent() && !Double.isNaN(age)
                        ? Optional.of(dates(row.get(), seen.get(), age))
                        : Optional.empty();
        return new Shedding(tooth, side, stands, row, seen.value(), age, date, missing);
    }

    /** Probability that the tooth is shed by that day; empty while the outlook is. */
    public Optional<Double> shedBy(LocalDate day) {
        return date.map(d -> row.orElseThrow()
                .shedBy(
                        age + java.time.temporal.ChronoUnit.DAYS.between(seen.orElseThrow(), day) / DAYS_PER_YEAR,
                        age));
    }

    private static ExpectedRange<LocalDate> dates(Exfoliation row, LocalDate seen, double age) {
        return new ExpectedRange<>(
                after(seen, row.age(ExpectedRange.TAIL, age) - age),
                after(seen, row.age(0.5, age) - age),
                after(seen, row.age(1 - ExpectedRange.TAIL, age) - age));
    }

    private static LocalDate after(LocalDate day, double years) {
        return day.plusDays(Math.round(years * DAYS_PER_YEAR));
    }

    /** The primary tooth stands: said of itself, or of the place of its successor. */
    static Answer stands(Case c, PrimaryTooth tooth, Side side) {
        Fact<ToothState> successor = c.tooth(tooth.successor(side)).state();
        Fact<ToothState> primary = c.tooth(tooth.tooth(side)).state();
        if (successor.is(ToothState.PRIMARY_PRESENT)
                || primary.is(ToothState.ERUPTED)
                || primary.is(ToothState.PRIMARY_PRESENT)) {
            return Answer.YES;
        }
        return primary.known() || successor.is(ToothState.ERUPTED) ? Answer.NO : Answer.unknown(primary.missing());
    }
}
