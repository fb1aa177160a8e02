package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Insertion checklist as a whole.
 *
 * @param gingivalClearance smallest gap between wire and gingiva, mm
 * @param blanching there is blanching
 * @param passiveGap largest gap at a bracket with the wire passive, mm
 * @param bracketsTied incisor brackets tied
 * @param eyeProtection eye protection was worn
 * @param airwayGuard an airway guard was in place
 * @param instructionsGiven the guardian was instructed
 */
@StandsAt("/insertion")
public record Inserted(
        Place place,
        Measured gingivalClearance,
        Answer blanching,
        Measured passiveGap,
        Measured bracketsTied,
        Answer eyeProtection,
        Answer airwayGuard,
        Answer instructionsGiven)
        implements CaseFact {}
