package dev.fairlead.measure.part;

import dev.fairlead.measure.Workbook;
import dev.fairlead.model.Case;

/** Works out forces and stress at a visit, without regard to a gauge. */
public interface ForcePart {
    /** The forces at visit {@code index}, from 0. */
    Forces at(Case c, int index, Workbook book);
}
