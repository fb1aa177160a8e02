package dev.fairlead.measure.mechanics.geometry;

import java.util.Arrays;

/**
 * Z-shaped fold in front of one molar tube, as bent and closed (legs parallel).
 *
 * @param r centreline radius of both bends, mm: radius of the plier beak plus half the wire diameter
 * @param leg leg 2, the straight piece that runs back distally below the tube, mm
 * @param leg3 leg 3, the straight piece that runs forward to the buccal run, mm
 * @param gap straight wire between the tube's mesial end and the first bend, mm
 * @param tipDeg how far the plane of the fold is turned buccally about the tube axis, degrees
 */
public record FoldSpec(double r, double leg, double leg3, double gap, double tipDeg) {

    public FoldSpec {
        Require.positive("bend radius", r);
        Require.positive("leg 2", leg);
        Require.notNegative("leg 3", leg3);
        Require.notNegative("gap between tube and bend", gap);
        if (!(Math.abs(tipDeg) < 90)) {
            throw new IllegalArgumentException("buccal tip must lie between -90 and 90 degrees: " + tipDeg);
        }
    }

    // written out: what Java makes of a record at the first call takes a start longer than all the geometry that is
    // looked up by it
    private double[] parts() {
        return new double[] {r, leg, leg3, gap, tipDeg};
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof FoldSpec f && Arrays.equals(parts(), f.parts());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts());
    }

    /** Wire used by the fold, mm: two half circles, both legs and the gap; opening does not change it. */
    public double wireLength() {
        return 2 * Math.PI * r + leg + leg3 + gap;
    }

    /** Height of the closed fold from tube to leg 3, in its own plane, mm. */
    public double height() {
        return 4 * r;
    }

    public double tip() {
        return Math.toRadians(tipDeg);
    }
}
