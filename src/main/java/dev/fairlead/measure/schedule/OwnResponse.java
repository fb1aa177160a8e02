package dev.fairlead.measure.schedule;

import dev.fairlead.measure.statistics.NumberWithError;
import dev.fairlead.measure.statistics.Population;
import dev.fairlead.model.Case;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.util.ArrayList;
import java.util.List;

/**
 * What share of its stand-off one side runs down from visit to visit: what is expected of any child, drawn towards what
 * this child has shown by as much as the readings are certain (empirical Bayes: Efron &amp; Morris 1975).
 *
 * @param steps how the estimate stood after each visit with a reading, from the second on
 * @param expected what is expected of any child
 * @param estimate the share now, 0 to 1, with its standard error
 * @param missing JSON Pointers of readings without which later visits say nothing
 */
public record OwnResponse(
        Side side, List<Step> steps, Population expected, NumberWithError estimate, List<String> missing) {
    /**
     * Share of the stand-off run down between two visits. Mean and spread are common practice: no trial of this wire is
     * known. They allow for the one published figure near to it, 55 % (SD 15 %) of programmed movement of upper
     * incisors, and reach from a quarter to all within two standard deviations. The last number is the spread from
     * visit to visit in one child, common practice too.
     */
    public static final Population EXPECTED = expected(Clinic.PUBLISHED);
    /**
     * Two standard errors of what is expected plus what readings leave open: beyond that a response is out of the usual
     * band.
     */
    private static final double BAND = 1.96;
    /** A stand-off that adds up to less tells nothing of the response, mm. */
    private static final double LEAST = 0.2;
    /** Shares beyond these make no forecast: a wire that stands still, or a front that passes the wire. */
    private static final double LOWEST = 0.05;

    /**
     * The estimate after one more visit.
     *
     * @param visit number of the visit, from 1
     * @param own share that this child has shown so far
     * @param weight weight of it, 0 to 1
     * @param drawn share after drawing own and expected together
     * @param outOfBand the own share is farther from the expected one than chance and reading errors explain
     */
    public record Step(int visit, Measured own, double weight, NumberWithError drawn, boolean outOfBand) {}

    public OwnResponse {
        steps = List.copyOf(steps);
        missing = List.copyOf(missing);
    }

    /** What is expected of any child of a clinic. */
    private static Population expected(Clinic clinic) {
        return new Population(clinic.rate().mean(), clinic.rate().sd(), 0.15);
    }

    /** From all visits of a case of that clinic. */
    public static OwnResponse of(Case c, Side side, Clinic clinic) {
        Population expected = expected(clinic);
        List<Step> steps = new ArrayList<>();
        List<Visit> visits = c.visits();
        Measured stoodOff = Measured.exact(0, Unit.MM);
        double squares = 0;
        for (int i = 0; i + 1 < visits.size(); i++) {
            Measured s = visits.get(i).side(side).standOff();
            Measured gained = Progressed.until(c, side, i + 1);
            stoodOff = stoodOff.plus(s);
            if (!stoodOff.known()) {
                return new OwnResponse(side, steps, expected, last(steps, expected), stoodOff.missing());
            }
            squares += s.value() * s.value();
            if (gained.known() && stoodOff.value() >= LEAST) {
                Measured scattered = gained.ratioTo(stoodOff, 1, Unit.RATIO)
                        .withError(
                                "response from visit to visit",
                                expected.within() * Math.sqrt(squares) / stoodOff.value());
                steps.add(step(i + 2, scattered, expected));
            } else if (i + 2 == visits.size()) {
                return new OwnResponse(side, steps, expected, last(steps, expected), gained.missing());
            }
        }
        return new OwnResponse(side, steps, expected, last(steps, expected), List.of());
    }

    private static Step step(int visit, Measured own, Population expected) {
        NumberWithError shown = new NumberWithError(own.value(), own.sd());
        boolean out = Math.abs(own.value() - expected.mean()) > BAND * Math.hypot(expected.between(), own.sd());
        return new Step(visit, own, expected.weight(own.sd()), expected.shrunk(shown), out);
    }

    private static NumberWithError last(List<Step> steps, Population expected) {
        return steps.isEmpty() ? expected.prior() : steps.get(steps.size() - 1).drawn();
    }

    /** True when the last estimate is out of the usual band. */
    public boolean outOfBand() {
        return !steps.isEmpty() && steps.get(steps.size() - 1).outOfBand();
    }

    /** The share that forecasts run by: slow, expected, fast. */
    ExpectedRange<Double> span() {
        return new ExpectedRange<>(
                usable(estimate.low(ExpectedRange.REACH)),
                usable(estimate.value()),
                usable(estimate.high(ExpectedRange.REACH)));
    }

    private static double usable(double share) {
        return Math.max(LOWEST, Math.min(1, share));
    }
}
