package dev.fairlead.web.plan;

import dev.fairlead.check.whatif.Remedy;
import dev.fairlead.check.whatif.WhatIf;
import java.util.List;
import java.util.Optional;

/**
 * What a search for other plans has come to.
 *
 * @param state whether it is still under way
 * @param found what it found; empty unless it is done
 * @param warnings each open warning with what would clear it
 * @param together one plan for all that can be cleared without harm; empty when there is none
 */
public record PlanSearch(State state, Optional<WhatIf> found, List<Warning> warnings, Optional<PlanOffer> together) {
    static final PlanSearch SEARCHING = new PlanSearch(State.SEARCHING, Optional.empty(), List.of(), Optional.empty());
    static final PlanSearch ENDED = new PlanSearch(State.ENDED, Optional.empty(), List.of(), Optional.empty());

    /** Under way, done, or ended because it took too long. */
    public enum State {
        SEARCHING,
        DONE,
        ENDED
    }

    /**
     * One open warning.
     *
     * @param offers the smallest single change, and the smallest set without harm to others where the single one does
     *     harm
     */
    public record Warning(Remedy outlook, List<PlanOffer> offers) {}

    public PlanSearch {
        warnings = List.copyOf(warnings);
    }

    /** The same for one warning alone; its list is empty when that criterion does not warn. */
    public PlanSearch about(String criterion) {
        return new PlanSearch(
                state,
                found,
                warnings.stream()
                        .filter(w -> w.outlook().finding().id().equals(criterion))
                        .toList(),
                Optional.empty());
    }

    public boolean searching() {
        return state == State.SEARCHING;
    }
}
