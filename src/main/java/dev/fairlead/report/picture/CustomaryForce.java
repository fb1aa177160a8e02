package dev.fairlead.report.picture;

import dev.fairlead.findings.Numbers;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Threshold;
import java.util.Map;
import java.util.Optional;

/**
 * The customary range of total labial force, as a rulebase has it.
 *
 * @param least gf
 * @param most gf
 */
public record CustomaryForce(double least, double most) {
    private static final String LEAST = "total-force-band.least";
    private static final String MOST = "total-force-band.most";

    /** The range; empty where the rulebase has no such limits. */
    public static Optional<CustomaryForce> of(Catalogue catalogue) {
        Map<String, Threshold> t = catalogue.thresholds();
        return t.containsKey(LEAST) && t.containsKey(MOST)
                ? Optional.of(
                        new CustomaryForce(t.get(LEAST).value(), t.get(MOST).value()))
                : Optional.empty();
    }

    /** As people read it: 140 to 240 gf. */
    public String words() {
        return Numbers.plain(least, 0) + " to " + Numbers.text(most, Unit.GF);
    }
}
