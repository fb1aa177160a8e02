package dev.fairlead.measure;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.position.PredictedIncisors;
import dev.fairlead.measure.records.RecordChecks;
import dev.fairlead.measure.schedule.Forecast;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.measure.working.Working;
import java.util.List;
import java.util.Optional;

/**
 * A case worked out.
 *
 * @param facts what the rules look at, in a fixed order
 * @param workings how numbers came about; empty when no workbook was kept
 * @param records how far the records can be believed
 * @param space room and need before treatment
 * @param position where the plan puts the incisors
 * @param front arch form and needed advancement; empty when no workbook was kept
 * @param forecast what lies ahead; empty when no workbook was kept
 */
public record Worked(
        List<CaseFact> facts,
        List<Working> workings,
        RecordChecks records,
        SpaceResult space,
        PredictedIncisors position,
        Optional<Front> front,
        Optional<Forecast> forecast) {}
