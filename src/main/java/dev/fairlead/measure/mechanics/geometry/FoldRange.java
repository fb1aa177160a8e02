package dev.fairlead.measure.mechanics.geometry;

/**
 * One fold as far as it is known: what it most likely is, and its softest and stiffest possible shape.
 *
 * @param softest largest bends and longest legs that are possible
 * @param stiffest smallest bends and shortest legs that are possible
 */
public record FoldRange(FoldSpec nominal, FoldSpec softest, FoldSpec stiffest) {

    /** A fold that was measured. */
    public static FoldRange measured(FoldSpec fold) {
        return new FoldRange(fold, fold, fold);
    }

    public boolean known() {
        return nominal.equals(softest) && nominal.equals(stiffest);
    }
}
