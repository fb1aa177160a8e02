package dev.fairlead.findings;

import dev.fairlead.model.Waiver;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the waivers of a case come to, without the words of findings.
 *
 * @param holding the waivers that hold, by the criterion that they answer for
 * @param notes waivers that do not hold
 */
public record Waived(Map<String, AppliedWaiver> holding, List<WaiverNote> notes) {
    /**
     * Weighs waivers on {@code day}; {@code endings} are those of the criteria that were judged, by the rulebase of
     * that catalogue.
     */
    public static Waived of(
            Map<String, Ending> endings, Catalogue catalogue, List<Waiver> waivers, Optional<LocalDate> day) {
        Waivers weighed = new Waivers(catalogue, endings, day);
        weighed.apply(waivers);
        return new Waived(Map.copyOf(weighed.holding()), weighed.notes());
    }

    /** Criteria that a waiver answers for. */
    public Set<String> criteria() {
        return holding.keySet();
    }
}
