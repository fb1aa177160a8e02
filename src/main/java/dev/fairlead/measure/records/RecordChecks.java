package dev.fairlead.measure.records;

import dev.fairlead.measure.working.CalendarMonths;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
import java.util.List;

/**
 * What tells whether the records of a case can be believed.
 *
 * @param duplicateLength duplicate error of crown widths and arch segments, mm
 * @param duplicateAngle duplicate error of head-film angles, degrees
 * @param perimeterGap absolute difference between the sum of the segments and the stated perimeter, mm
 * @param modelsAge calendar months from the models to the start of treatment, or to the day of the check before it
 * @param filmAge the same of the head film
 * @param modelsAgeSoFar the same as {@code modelsAge}; where the day is not known, the least that it can be
 * @param filmAgeSoFar the same as {@code filmAge}; where the day is not known, the least that it can be
 */
public record RecordChecks(
        Measured duplicateLength,
        Measured duplicateAngle,
        Measured perimeterGap,
        Measured modelsAge,
        Measured filmAge,
        Measured modelsAgeSoFar,
        Measured filmAgeSoFar) {
    private static final String GROUP = "Records";

    /** The checks of a case on {@code day}, which may be unknown. */
    public static RecordChecks of(Readings readings, Fact<LocalDate> day) {
        Case c = readings.ofCase();
        Measured segments = readings.segment(dev.fairlead.model.Side.RIGHT)
                .plus(readings.incisorSegment())
                .plus(readings.segment(dev.fairlead.model.Side.LEFT));
        Fact<LocalDate> models = c.films().models();
        Fact<LocalDate> film = c.films().headFilm();
        Fact<LocalDate> start = start(c, day);
        Measured modelsAge = months(models, start);
        Measured filmAge = months(film, start);
        return new RecordChecks(
                length(readings),
                repeated(c.headFilm().incisorMandibular(), "/headFilm/incisorMandibular", List.of())
                                .isEmpty()
                        ? Measured.exact(readings.angles().error(), Unit.DEGREE)
                        : Measured.unknown(next(c.headFilm().incisorMandibular(), "/headFilm/incisorMandibular")),
                segments.minus(readings.perimeter()).abs(),
                modelsAge,
                filmAge,
                atLeast(modelsAge, models, film),
                atLeast(filmAge, film, models));
    }

    /**
     * Known once every key length was read twice: the four incisors and the three segments that the shortage is made
     * of.
     */
    private static Measured length(Readings readings) {
        Case c = readings.ofCase();
        List<String> once = List.of();
        for (Tooth t : Tooth.LOWER_INCISORS) {
            Measured w = c.tooth(t).width();
            once = repeated(w, "/teeth/" + t + "/width", once);
        }
        once = repeated(c.space().left(), "/space/left", once);
        once = repeated(c.space().right(), "/space/right", once);
        once = repeated(c.space().incisors(), "/space/incisors", once);
        return once.isEmpty() ? Measured.exact(readings.lengths().error(), Unit.MM) : Measured.unknown(once);
    }

    private static List<String> repeated(Measured value, String pointer, List<String> once) {
        return value.repeatCount() > 1 ? once : Pointers.union(once, List.of(next(value, pointer)));
    }

    /** Of what was read once the second reading is missing: the element behind the last, as RFC 6901 points at it. */
    private static String next(Measured value, String pointer) {
        return value.known() ? pointer + "/-" : pointer;
    }

    /**
     * Once there are visits, the day on which the wire went in or the first of them, whichever is earlier: from then on
     * the records are those that treatment began with. While either day is open, nobody knows when that was.
     */
    private static Fact<LocalDate> start(Case c, Fact<LocalDate> day) {
        if (c.visits().isEmpty()) {
            return day;
        }
        Fact<LocalDate> first = c.visits().get(0).date();
        Fact<LocalDate> in = c.insertion().date();
        boolean afterwards = in.known() && first.known() && in.get().isAfter(first.get());
        return !in.applies() || !first.known() || afterwards ? first : in;
    }

    /**
     * While it is open to which day a record is counted: its age on the day of the other record, for treatment that
     * began before that day would have begun without the other.
     */
    private static Measured atLeast(Measured age, Fact<LocalDate> record, Fact<LocalDate> other) {
        boolean open = !age.known() && age.applies() && record.known() && other.known();
        return open && other.get().isAfter(record.get()) ? months(record, other) : age;
    }

    /** Calendar months from a record to the start of treatment, or to the day; negative when it is dated later. */
    static Measured months(Fact<LocalDate> record, Fact<LocalDate> to) {
        if (record.known() && to.known()) {
            return CalendarMonths.between(record.get(), to.get());
        }
        if (!record.applies()) {
            return Measured.notApplicable();
        }
        return Measured.unknown(Pointers.union(record.missing(), to.missing()));
    }

    /** Notes how each was worked out. */
    public void write(Readings readings, Workbook book) {
        book.add(() -> Working.of(
                "records.duplicate-length",
                GROUP,
                "duplicate error of lengths",
                duplicateLength,
                "s = sqrt(sum d² / 2n) over n pairs of readings",
                pairs(readings.lengths()),
                "Crown widths and arch segments. " + replaced(readings.widths(), "crown widths", ErrorKind.TOOTH_WIDTH)
                        + " " + replaced(readings.segments(), "segments", ErrorKind.SEGMENT),
                "dahlberg-1940",
                "houston-1983"));
        book.add(() -> Working.of(
                "records.duplicate-angle",
                GROUP,
                "duplicate error of angles",
                duplicateAngle,
                "s = sqrt(sum d² / 2n) over n pairs of readings",
                pairs(readings.angles()),
                "Angles on the lateral cephalogram.",
                "dahlberg-1940"));
        book.add(() -> Working.of(
                "records.perimeter-gap",
                GROUP,
                "segments against the stated perimeter",
                perimeterGap,
                "|right + incisors + left - perimeter|",
                "|"
                        + Say.sum(
                                readings.segment(dev.fairlead.model.Side.RIGHT),
                                readings.incisorSegment(),
                                readings.segment(dev.fairlead.model.Side.LEFT))
                        + " - " + Say.num(readings.perimeter()) + "|",
                "",
                "common-practice"));
        book.add(() -> Working.of(
                "records.models-age",
                GROUP,
                "age of the study models",
                modelsAge,
                "calendar months from the models to the day on which the wire went in, or the first visit if that is earlier; before it to the day of the check",
                "",
                "",
                "common-practice"));
        book.add(() -> Working.of(
                "records.film-age",
                GROUP,
                "age of the lateral cephalogram",
                filmAge,
                "calendar months from the film to the day on which the wire went in, or the first visit if that is earlier; before it to the day of the check",
                "",
                "",
                "common-practice"));
    }

    private static String pairs(Duplicates d) {
        return "n = " + d.pairs() + ", s = " + (d.pairs() == 0 ? "?" : Say.num(d.error()));
    }

    private static String replaced(Duplicates d, String what, ErrorKind kind) {
        return d.enough()
                ? "The case's own error of " + what + " (" + Say.num(d.error())
                        + " mm) stands in place of the assumed one."
                : "The assumed error of " + what + " stands (" + Say.num(kind.defaultSd()) + " mm; " + kind.source()
                        + "): " + d.pairs() + " pairs, " + Duplicates.ENOUGH + " are needed to replace it.";
    }
}
