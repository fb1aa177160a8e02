package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
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
