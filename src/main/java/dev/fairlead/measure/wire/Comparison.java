package dev.fairlead.measure.wire;

import dev.fairlead.model.Case;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.ArrayList;
import java.util.List;

/**
 * A mark or a size of a fold as worked out beside the one that was made, mm.
 *
 * @param what such as "first bend"
 * @param off made less worked out
 */
public record Comparison(Side side, String what, Measured planned, Measured made, Measured off) {
    static List<Comparison> of(Case c, Side side, SideMarks marks, FoldOpening plan) {
        Fold made = c.bench().fold(side);
        List<Comparison> all = new ArrayList<>();
        all.add(of(side, "first bend from the midline", marks.firstBend(), made.firstMark()));
        all.add(of(side, "first bend distal to the tube", marks.offset(), made.firstBendOffset()));
        all.add(of(side, "fold length", plan.leg(), made.length()));
        all.add(of(side, "fold height", plan.height(), made.height()));
        all.add(of(side, "inner radius of the bends", c.wire().beakRadius(), made.bendRadius()));
        return all;
    }

    private static Comparison of(Side side, String what, Measured planned, Measured made) {
        return new Comparison(side, what, planned, made, made.minus(planned));
    }
}
