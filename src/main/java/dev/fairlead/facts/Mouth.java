package dev.fairlead.facts;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;

/**
 * Hygiene, history, habits, tolerance, roots and consent.
 *
 * @param plaqueScore plaque score, per cent
 * @param untreatedCaries there is untreated caries
 * @param activeGingivitis there is active gingivitis
 * @param nickelExposed a sensitivity to nickel is recorded and the chosen wire contains nickel
 * @param shortRoots a film shows short roots
 * @param resorption a film shows root resorption
 * @param guardianConsent the guardian consented
 * @param stabilityExplained the limits of stability were explained
 * @param risksExplained root resorption, white spots, recession and breakage were explained
 * @param historyTaken the medical history was taken
 * @param medicalFinding it names something that matters
 * @param medicalSettled advice on that was sought, or there is nothing to seek it on
 * @param habitsLookedFor habits were looked for
 * @param habit one of them is there
 * @param habitSettled the plan addresses it, or there is none
 */
@StandsAt("/mouth")
public record Mouth(
        Place place,
        Measured plaqueScore,
        Answer untreatedCaries,
        Answer activeGingivitis,
        Answer nickelExposed,
        Answer shortRoots,
        Answer resorption,
        Answer guardianConsent,
        Answer stabilityExplained,
        Answer risksExplained,
        Answer historyTaken,
        Answer medicalFinding,
        Answer medicalSettled,
        Answer habitsLookedFor,
        Answer habit,
        Answer habitSettled)
        implements CaseFact {}
