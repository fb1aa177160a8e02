package dev.fairlead.measure.mechanics.answer;

import java.util.List;

/** Outcome of asking for a force band: the band, or why there is none. */
public sealed interface BandResult permits ForceBand, BandResult.NoBand {

    /**
     * At least one end of the band could not be solved, so there is no band to show.
     *
     * @param reasons which case failed and why
     */
    record NoBand(List<String> reasons) implements BandResult {
        public NoBand {
            reasons = List.copyOf(reasons);
        }
    }
}
