package dev.fairlead.findings;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;

/** What a criterion demands, with the thresholds in force put into its text. */
public final class Asks {
    private Asks() {}

    public static String of(Criterion criterion, Catalogue catalogue) {
        return new Template(criterion, catalogue).general(criterion.asks());
    }
}
