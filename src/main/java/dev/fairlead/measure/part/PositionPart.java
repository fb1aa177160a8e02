package dev.fairlead.measure.part;

import dev.fairlead.measure.Workbook;
import dev.fairlead.measure.records.Readings;

/** Predicts where the planned advancement puts the lower incisors. */
public interface PositionPart {
    Position after(Readings readings, Workbook book);
}
