package dev.fairlead.measure.gather;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.position.PredictedIncisors;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.records.RecordChecks;
import dev.fairlead.measure.schedule.Activations;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.measure.wire.WireMarks;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import java.time.LocalDate;

/** Everything that facts are gathered from. */
public record Gathered(
        Case c,
        Readings readings,
        RecordChecks records,
        SpaceResult space,
        PredictedIncisors position,
        Activations activations,
        PatientArch arch,
        WireMarks marks,
        Fact<LocalDate> day,
        Calculations parts,
        Workbook book) {}
