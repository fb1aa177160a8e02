package dev.fairlead.measure;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.gather.Facts;
import dev.fairlead.measure.gather.Gathered;
import dev.fairlead.measure.position.PredictedIncisors;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.records.RecordChecks;
import dev.fairlead.measure.schedule.Activations;
import dev.fairlead.measure.schedule.Forecast;
import dev.fairlead.measure.space.SpaceAnalysis;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.measure.space.SpaceWords;
import dev.fairlead.measure.wire.WireMarks;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Works out a case: all facts that rules look at, and how each number came about. */
public final class Measures {
    private Measures() {}

    /** Works out a case with published rules of thumb and plane geometry. */
    public static Worked of(Case c, Optional<LocalDate> day, Workbook book) {
        return of(c, day, book, Calculations.plain());
    }

    /** Works out a case for {@code day}, or for the day that the case names. */
    public static Worked of(Case c, Optional<LocalDate> day, Workbook book, Calculations parts) {
        Readings readings = new Readings(c);
        Fact<LocalDate> on = day.isPresent() ? Fact.of(day.get()) : c.date();
        RecordChecks records = RecordChecks.of(readings, on);
        SpaceResult space = SpaceAnalysis.of(readings, book.wanted());
        if (book.wanted()) {
            records.write(readings, book);
            SpaceWords.write(space, readings, book);
        }
        PredictedIncisors position = parts.position().after(readings, book);
        Activations activations = new Activations(c);
        PatientArch arch = PatientArch.of(c);
        Optional<Front> front =
                book.wanted() ? Optional.of(Front.of(readings, space, position, arch, book)) : Optional.empty();
        WireMarks marks = new WireMarks(c, parts.archOfLine(arch));
        List<CaseFact> facts = Facts.of(
                new Gathered(c, readings, records, space, position, activations, arch, marks, on, parts, book));
        Optional<Forecast> forecast =
                book.wanted() ? Optional.of(Forecast.of(c, space, on, parts.clinic(), book)) : Optional.empty();
        return new Worked(facts, book.workings(), records, space, position, front, forecast);
    }
}
