package dev.fairlead.measure.position;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.working.Workbook;

/** Predicts where the planned advancement puts the lower incisors. */
public interface IncisorPrediction {
    PredictedIncisors after(Readings readings, Workbook book);
}
