package dev.fairlead.measure.mechanics;

import java.util.List;

/**
 * At least one end of the band could not be solved, so there is no band to show.
 *
 * @param reasons which case failed and why
 */
public record NoBand(List<String> reasons) implements BandResult {
    public NoBand {
        reasons = List.copyOf(reasons);
    }
}
