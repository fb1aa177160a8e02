package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * One activation visit as a whole.
 *
 * @param visit number of the visit, from 1
 * @param weeksSince weeks since the activation before; does not apply at the first
 * @param weeksUnseen weeks from this visit to the next, or to the day of the check or of taking the brackets off, while
 *     an active wire is in; does not apply before the first opening
 * @param frontOffLevel height of the passive front above or below the slots after opening, mm
 * @param plaque share of surfaces with plaque, per cent
 * @param newWhiteSpots there are new white spots
 * @param forceLow low end of the total labial force, gf; the gauge reading where there is one
 * @param forceHigh high end of the total labial force, gf; the gauge reading where there is one
 * @param peakStress peak bending stress in the wire, MPa
 * @param overProof peak bending stress less proof strength, MPa
 * @param intrusivePerIncisor intrusive force per incisor, mean, gf; negative when it extrudes
 * @param newRecession there is new recession
 * @param mobilityAboveI mobility is above grade I
 * @param blanching there is blanching that stays
 * @param lastingPain pain lasted
 * @param resorption a film shows root resorption
 */
@StandsAt("/visits")
public record VisitSeen(
        Place place,
        int visit,
        Measured weeksSince,
        Measured weeksUnseen,
        Measured frontOffLevel,
        Measured plaque,
        Answer newWhiteSpots,
        Measured forceLow,
        Measured forceHigh,
        Measured peakStress,
        Measured overProof,
        Measured intrusivePerIncisor,
        Answer newRecession,
        Answer mobilityAboveI,
        Answer blanching,
        Answer lastingPain,
        Answer resorption)
        implements CaseFact {}
