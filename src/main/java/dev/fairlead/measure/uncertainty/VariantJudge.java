package dev.fairlead.measure.uncertainty;

import dev.fairlead.model.Case;

/**
 * Measures and judges one variant of a case; must be safe to share between threads and give the same for the same case.
 */
@FunctionalInterface
public interface VariantJudge {
    /** One number for each criterion, always in the same order; equal numbers mean the same outcome. */
    int[] of(Case variant);
}
