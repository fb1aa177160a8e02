package dev.fairlead.check.whatif;

import dev.fairlead.measure.wire.ForceModel;
import dev.fairlead.measure.wire.GaugeReading;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.List;

/**
 * A gauge reading that would not have been read, since the wire or its stand-offs at that visit are taken to be
 * otherwise.
 *
 * @param visit counted from 1
 * @param read what the gauge showed, gf
 * @param instead what is reckoned with, gf; unknown where the beam model cannot tell
 */
public record GaugeEstimate(int visit, Measured read, Measured instead) {
    /** Those of a case that differs from the one of which the gauges were read. */
    static List<GaugeEstimate> of(Case read, Case other, ForceModel force) {
        List<GaugeEstimate> all = new ArrayList<>();
        for (int i = 0; i < Math.min(read.visits().size(), other.visits().size()); i++) {
            Measured there = other.visits().get(i).gauge();
            Measured instead = GaugeReading.carried(read, other, i, force);
            if (!instead.equals(there)) {
                all.add(new GaugeEstimate(i + 1, there, instead));
            }
        }
        return all;
    }

    /** The case with the estimates in place of the readings. */
    static Case in(Case c, List<GaugeEstimate> all) {
        Case changed = c;
        for (GaugeEstimate e : all) {
            changed = Edit.set(changed, "/visits/" + (e.visit() - 1) + "/gauge", e.instead());
        }
        return changed;
    }
}
