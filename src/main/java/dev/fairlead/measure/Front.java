package dev.fairlead.measure;

import dev.fairlead.measure.arch.ArchAnalysis;
import dev.fairlead.measure.arch.ArchResult;
import dev.fairlead.measure.arch.ArchWords;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.arch.PositionAnalysis;
import dev.fairlead.measure.arch.PositionResult;
import dev.fairlead.measure.arch.PositionWords;
import dev.fairlead.measure.position.PredictedIncisors;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.measure.working.Workbook;

/**
 * Form of the arch, and what its incisors need and are planned to do: what people look at beyond the facts that rules
 * judge.
 */
public record Front(ArchResult arch, PositionResult position) {
    static Front of(Readings readings, SpaceResult space, PredictedIncisors after, PatientArch arch, Workbook book) {
        ArchResult form = ArchAnalysis.of(readings, space, arch);
        ArchWords.write(form, readings.ofCase(), arch, book);
        PositionResult position = PositionAnalysis.of(
                readings,
                space,
                arch,
                new PositionAnalysis.After(
                        after.inclination(), after.compensated(), after.toAPog(), after.overjet(), after.overbite()));
        PositionWords.write(position, readings, space, arch, book);
        return new Front(form, position);
    }
}
