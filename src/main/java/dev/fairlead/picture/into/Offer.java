package dev.fairlead.picture.into;

import dev.fairlead.measure.picture.PictureValue;

/**
 * A reading that a case could take.
 *
 * @param there what stands in the case for it, as a person would type it; empty when nothing does
 * @param becomes what would stand there with it; empty where the case cannot take it
 * @param refusal why not; empty where it can
 */
public record Offer(PictureValue value, String there, String becomes, String refusal) {
    /** True where a reading stands there already, which is asked about before another is put beside it. */
    public boolean beside() {
        return !there.isEmpty();
    }

    public boolean possible() {
        return refusal.isEmpty();
    }
}
