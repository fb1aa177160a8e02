package dev.fairlead.measure.part;

import dev.fairlead.measure.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import java.util.List;

/** Stands where no beam model of the wire is at hand: only a gauge can tell the force, and nothing the stress. */
final class NoForceModel implements ForcePart {
    @Override
    public Forces at(Case c, int index, Workbook book) {
        Measured gauge = Measured.unknown("/visits/" + index + "/gauge");
        List<String> heights = Pointers.union(c.hardware().left().aboveBrackets().missing(), c.hardware().right().aboveBrackets().missing());
        return new Forces(gauge, gauge, gauge, heights.isEmpty() ? gauge : Measured.unknown(heights));
    }
}
