package dev.fairlead.measure.part;

import dev.fairlead.measure.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;

/** Works out the geometry of the wire: how it fits the arch, what it takes from the blank, how a fold opens. */
public interface WirePart {
    /**
     * Misfit of the wire's form to the patient's arch.
     *
     * @param rms root mean square, mm
     * @param worst largest anywhere, mm
     */
    record Misfit(Measured rms, Measured worst) {}

    /** Misfit of the preformed or reshaped wire, for a case where none was measured. */
    Misfit misfit(Case c, Workbook book);

    /** Blank length less what arch, folds, tubes and tails take, mm. */
    Measured blankSpare(Case c, Workbook book);

    /** Height that the planned beak gives a fold, mm. */
    Measured plannedHeight(Case c, Workbook book);

    /** How far the fold swings towards the cheek at the planned activation, mm. */
    Measured swing(Case c, Side side, Workbook book);

    /** How far the fold carries the front forward once its gap was opened by so many mm in all, mm. */
    Measured forward(Case c, Side side, Measured gapOpened);

    /** How far a fold can carry the front forward before it is no longer a fold, mm. */
    Measured reach(Case c, Side side);
}
