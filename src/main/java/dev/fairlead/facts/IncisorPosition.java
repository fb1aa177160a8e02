package dev.fairlead.facts;

import dev.fairlead.model.Measured;

/**
 * Where the lower incisors stand and where the plan puts them.
 *
 * @param inclination lower incisor to mandibular plane before treatment, degrees
 * @param inclinationAfter the same after the planned advancement, degrees; its error spans the published ways of
 *     predicting; the least that it can be while the amount of a side is missing
 * @param compensatedAfter the same compensated for the mandibular plane angle: (FMA - 25) added, degrees; the least
 *     that it can be while the amount of a side is missing
 * @param inclinationMost inclination after by the steepest published figures for what was not measured, degrees
 * @param compensatedMost the same compensated for the mandibular plane angle, degrees
 * @param toAPogAfter incisal edge to A-Pog after the planned advancement, mm
 * @param toAPogSoFar the same; the least that it can be while the amount of a side is missing, mm
 */
@StandsAt("/headFilm")
public record IncisorPosition(
        Place place,
        Measured inclination,
        Measured inclinationAfter,
        Measured compensatedAfter,
        Measured inclinationMost,
        Measured compensatedMost,
        Measured toAPogAfter,
        Measured toAPogSoFar)
        implements CaseFact {}
