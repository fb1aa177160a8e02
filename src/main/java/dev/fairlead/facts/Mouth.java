package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Hygiene, tolerance, roots and consent.
 *
 * @param plaqueScore plaque score, per cent
 * @param untreatedCaries there is untreated caries
 * @param activeGingivitis there is active gingivitis
 * @param nickelSensitivity a nickel sensitivity is recorded
 * @param wireBearsNickel the chosen wire bears nickel
 * @param shortRoots a film shows short roots
 * @param resorption a film shows root resorption
 * @param guardianConsent the guardian consented
 * @param stabilityExplained the limits of stability were explained
 */
@StandsAt("/mouth")
public record Mouth(
        Place place,
        Measured plaqueScore,
        Answer untreatedCaries,
        Answer activeGingivitis,
        Answer nickelSensitivity,
        Answer wireBearsNickel,
        Answer shortRoots,
        Answer resorption,
        Answer guardianConsent,
        Answer stabilityExplained)
        implements CaseFact {}
