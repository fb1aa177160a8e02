package dev.fairlead.facts;

import dev.fairlead.model.Measured;

/**
 * The activation that is planned, before the wire goes in.
 *
 * @param standOff planned stand-off of the passive front, the larger where the sides differ, mm; unknown while that of
 *     a side is missing
 * @param standOffMost the larger of those that are known, mm
 * @param standOffLeast the smaller of those that are known, mm; a side that is not to advance is passed over
 * @param interval planned weeks between activations
 * @param forceLow low end of the total labial force at that stand-off, gf; force and stress do not apply once visits
 *     are recorded
 * @param forceHigh high end of it, gf
 * @param peakStress peak bending stress at that stand-off, MPa
 * @param overProof peak bending stress less proof strength, MPa
 */
@StandsAt("/plan")
public record PlannedActivation(
        Place place,
        Measured standOff,
        Measured standOffMost,
        Measured standOffLeast,
        Measured interval,
        Measured forceLow,
        Measured forceHigh,
        Measured peakStress,
        Measured overProof)
        implements CaseFact {}
