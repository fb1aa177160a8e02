package dev.fairlead.measure.position;

import dev.fairlead.model.Measured;

/**
 * Where the plan puts the lower incisors.
 *
 * @param inclination lower incisor to mandibular plane, degrees
 * @param compensated the same with (FMA - 25) added, degrees
 * @param inclinationMost inclination by the steepest figures for what was not measured, degrees
 * @param compensatedMost the same with (FMA - 25) added, degrees
 * @param toAPog incisal edge to A-Pog, mm
 * @param overjet overjet left, mm
 * @param overbite overbite left, mm
 * @param overbiteLeast overbite left by the steepest figures for what was not measured, mm
 */
public record PredictedIncisors(
        Measured inclination,
        Measured compensated,
        Measured inclinationMost,
        Measured compensatedMost,
        Measured toAPog,
        Measured overjet,
        Measured overbite,
        Measured overbiteLeast) {}
