package dev.fairlead.check.whatif;

import dev.fairlead.check.Checked;
import dev.fairlead.model.Stage;
import java.util.List;
import java.util.Optional;

/**
 * What could clear the open warnings of a case.
 *
 * @param checked the case as it stands
 * @param outlooks each open warning, in the order of the catalogue
 * @param together one plan that clears all that can be cleared without harm to others; empty when there is none, or
 *     only one warning
 * @param tried other plans that were measured and judged
 */
public record WhatIf(Checked checked, List<Remedy> outlooks, Optional<Suggestion> together, int tried) {
    public WhatIf {
        outlooks = List.copyOf(outlooks);
    }

    /** Warnings on the child and the wire, before anything was bent, that no other plan clears. */
    public List<Remedy> uncleared() {
        return outlooks.stream()
                .filter(o -> o.best().isEmpty()
                        && o.searched()
                        && o.finding().stage().compareTo(Stage.BENCH) < 0)
                .toList();
    }
}
