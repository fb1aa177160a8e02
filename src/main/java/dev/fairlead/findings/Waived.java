package dev.fairlead.findings;

import dev.fairlead.model.Waiver;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.verdict.Ending;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the waivers of a case come to, without the words of findings.
 *
 * @param criteria those that a waiver answers for
 * @param notes waivers that do not hold
 */
public record Waived(Set<String> criteria, List<WaiverNote> notes) {
    /**
     * Weighs waivers on {@code day}; {@code endings} are those of the criteria that were judged, by the rulebase of
     * that catalogue.
     */
    public static Waived of(
            Map<String, Ending> endings, Catalogue catalogue, List<Waiver> waivers, Optional<LocalDate> day) {
        Waivers weighed = new Waivers(catalogue, endings, day);
        weighed.apply(waivers);
        return new Waived(Set.copyOf(weighed.holding().keySet()), weighed.notes());
    }
}
