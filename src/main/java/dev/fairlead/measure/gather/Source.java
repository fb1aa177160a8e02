package dev.fairlead.measure.gather;

import dev.fairlead.measure.Workbook;
import dev.fairlead.measure.part.Parts;
import dev.fairlead.measure.part.Position;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.records.RecordChecks;
import dev.fairlead.measure.schedule.Activations;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.Case;

/** Everything that facts are gathered from. */
public record Source(
        Case c,
        Readings readings,
        RecordChecks records,
        SpaceResult space,
        Position position,
        Activations activations,
        Parts parts,
        Workbook book) {}
