package dev.fairlead.report.sheet;

import dev.fairlead.findings.Numbers;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Threshold;

/**
 * What the criteria allow around the numbers of a bench sheet.
 *
 * @param firstBend of the first bend from its place, mm to either side
 * @param length of a leg from the length of its tube, mm to either side
 * @param parallel of legs from parallel, degrees to either side
 * @param square of a fold's stand from what is asked, degrees to either side
 * @param higher that a fold may be higher than planned, mm
 * @param gingiva least gap to the gingiva, mm
 * @param passive largest gap at a bracket, mm
 * @param proud that a cut end may stand out of its tube, mm
 * @param sides that left and right may differ, mm
 * @param level of the front from the slots, mm
 * @param size of the wire's diameter from the planned one, mm
 */
record Tolerances(
        double firstBend,
        double length,
        double parallel,
        double square,
        double higher,
        double gingiva,
        double passive,
        double proud,
        double sides,
        double level,
        double size) {
    /** How well a gap is read at the bench, mm: one standard deviation. */
    static final double GAP = ErrorKind.BENCH_LENGTH.defaultSd();

    /** Those of a rulebase. */
    static Tolerances of(Catalogue catalogue) {
        return new Tolerances(
                value(catalogue, "first-bend-offset.high"),
                value(catalogue, "fold-length-is-tube-length.off"),
                value(catalogue, "legs-parallel.off"),
                value(catalogue, "bends-square.off"),
                value(catalogue, "bends-small.height"),
                value(catalogue, "exit-clears-gingiva.gingiva"),
                value(catalogue, "passive-on-model.gap"),
                value(catalogue, "distal-ends-flush.proud"),
                value(catalogue, "sides-match.differ"),
                value(catalogue, "front-level.off"),
                value(catalogue, "wire-is-as-planned.size"));
    }

    private static double value(Catalogue catalogue, String id) {
        Threshold t = catalogue.thresholds().get(id);
        if (t == null) {
            throw new IllegalArgumentException("the rulebase has no threshold " + id + ", which a bench sheet tells");
        }
        return t.value();
    }

    /** By how much the gap between two legs may differ at the end of a leg so long that is so far from parallel, mm. */
    double gap(double leg) {
        return leg * Math.sin(Math.toRadians(parallel));
    }

    static String plusMinus(double tolerance) {
        return "± " + number(tolerance);
    }

    static String degrees(double tolerance) {
        return "± " + Numbers.text(tolerance, Unit.DEGREE).replace(".0", "");
    }

    static String number(double v) {
        return Numbers.plain(v, Math.abs(v * 10 - Math.rint(v * 10)) < 1e-9 ? 1 : 2);
    }
}
