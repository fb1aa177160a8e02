package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import java.util.List;

/** Stands where the beam model of the wire is left out: only a gauge can tell the force, and nothing the stress. */
public final class NoForceModel implements ForceModel {
    @Override
    public Forces planned(Case c) {
        return at(c, 0, Workbook.none());
    }

    @Override
    public Forces at(Case c, int index, Workbook book) {
        String leftOut = ForceModel.leftOut(index);
        List<String> heights = Pointers.union(
                c.hardware().left().aboveBrackets().missing(),
                c.hardware().right().aboveBrackets().missing());
        boolean asked = !heights.isEmpty()
                || c.hardware().left().aboveBrackets().known()
                        && c.hardware().right().aboveBrackets().known();
        Measured total = Measured.unknown(List.of("/visits/" + index + "/gauge", leftOut));
        return new Forces(
                total,
                total,
                Measured.unknown(leftOut),
                asked ? Measured.unknown(Pointers.union(heights, List.of(leftOut))) : Measured.notApplicable());
    }
}
