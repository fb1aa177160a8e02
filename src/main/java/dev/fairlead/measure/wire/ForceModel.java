package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Side;
import dev.fairlead.model.Visit;
import dev.fairlead.model.VisitSide;
import dev.fairlead.model.shape.Draft;
import dev.fairlead.model.shape.Edit;
import java.util.List;

/** Works out forces and stress at a visit, without regard to a gauge. */
public interface ForceModel {
    /** The forces at visit {@code index}, from 0. */
    Forces at(Case c, int index, Workbook book);

    /**
     * Works out now what {@link #at} will be asked, so that another thread which asks it meanwhile waits less; nothing
     * where that gains nothing.
     */
    default void ahead(Case c) {}

    /** The forces of the planned activation of a case without visits. */
    default Forces planned(Case c) {
        return at(withPlannedVisit(c), 0, Workbook.none());
    }

    /**
     * A case without visits as if its planned activation were the first: what {@link #at} tells of it is the plan's.
     */
    static Case withPlannedVisit(Case c) {
        String left = "/visits/0/left";
        String right = "/visits/0/right";
        Visit planned = Draft.of(Visit.class, "/visits/0")
                .set(
                        "left",
                        Draft.of(VisitSide.class, left)
                                .set("standOff", c.plan().standOff(Side.LEFT))
                                .make())
                .set(
                        "right",
                        Draft.of(VisitSide.class, right)
                                .set("standOff", c.plan().standOff(Side.RIGHT))
                                .make())
                .make();
        return Edit.set(c, "/visits", List.of(planned));
    }

    /**
     * What is missing at visit {@code index} where the beam model was left out: no measurement, but its answer; the
     * name says so wherever it is shown.
     */
    static String leftOut(int index) {
        return "/visits/" + index + "/beamModelOfTheWireOmitted";
    }

    /** True when a criterion waits for the beam model because it was left out, whatever else it waits for. */
    static boolean leftOut(List<String> missing) {
        return missing.stream().anyMatch(p -> p.endsWith("/beamModelOfTheWireOmitted"));
    }
}
