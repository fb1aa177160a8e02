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
 * @param mildest the mildest that the plan can lead to while a number that it rests on is missing
 */
public record PredictedIncisors(
        Measured inclination,
        Measured compensated,
        Measured inclinationMost,
        Measured compensatedMost,
        Measured toAPog,
        Measured overjet,
        Measured overbite,
        Measured overbiteLeast,
        Mildest mildest) {
    /**
     * Where the plan puts the incisors if a side whose amount is missing is not advanced at all, and if angles of the
     * head film that are missing are as mild as they can be; each as predicted where nothing is missing.
     *
     * @param inclination least inclination, degrees
     * @param compensated least inclination with (FMA - 25) added, degrees
     * @param toAPog least distance of the edge to A-Pog, mm
     * @param overjet most overjet, mm
     * @param overbite most overbite, mm
     */
    public record Mildest(
            Measured inclination, Measured compensated, Measured toAPog, Measured overjet, Measured overbite) {}
}
