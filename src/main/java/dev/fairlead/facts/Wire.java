package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * The wire in hand against the plan.
 *
 * @param round its section is round
 * @param steel it is stainless steel
 * @param offPlan absolute difference from the planned diameter, mm
 * @param stiffnessRatio bending stiffness E times I against round steel of the planned diameter
 * @param blankSpare blank length less what arch, folds, tubes and tails take, mm
 * @param misfitRms root-mean-square misfit of the arch form to the patient's arch, mm
 * @param misfitWorst largest misfit, mm
 * @param misfitRmsAfter root-mean-square misfit after bending, mm
 * @param misfitWorstAfter largest misfit after bending, mm
 */
@StandsAt("/wire")
public record Wire(
        Place place,
        Answer round,
        Answer steel,
        Measured offPlan,
        Measured stiffnessRatio,
        Measured blankSpare,
        Measured misfitRms,
        Measured misfitWorst,
        Measured misfitRmsAfter,
        Measured misfitWorstAfter)
        implements CaseFact {}
