package dev.fairlead.audit.cohort;

import dev.fairlead.audit.cohort.Planted.Kind;
import dev.fairlead.model.Case;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * An invented case and the truth about it: what is named in {@code planted} has to be found, and every other criterion
 * that applies at the case's stage has to pass.
 */
public record PlantedCase(Case made, List<Planted> planted) {
    public PlantedCase {
        planted = List.copyOf(planted);
    }

    /** Criteria that have to warn. */
    public Set<String> warns() {
        return criteria(Kind.WARNS);
    }

    /** Criteria that cannot be assessed. */
    public Set<String> notAssessed() {
        return criteria(Kind.NOT_ASSESSED);
    }

    private Set<String> criteria(Kind kind) {
        Set<String> all = new TreeSet<>();
        for (Planted p : planted) {
            if (p.kind() == kind) {
                all.add(p.criterion());
                all.addAll(p.follows());
            }
        }
        return all;
    }
}
