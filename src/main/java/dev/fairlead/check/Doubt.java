package dev.fairlead.check;

import dev.fairlead.findings.Certainty;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Findings;
import dev.fairlead.findings.RepeatAdvice;
import dev.fairlead.findings.Report;
import dev.fairlead.measure.uncertainty.Compared;
import dev.fairlead.measure.uncertainty.Repeat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How sure the findings of a case are, given the errors of its measurements.
 *
 * @param flips each criterion judged, in catalogue order
 * @param expected expected number of criteria that would end differently
 * @param compared values near enough to a threshold to matter, with the chance that each lies on the other side
 * @param repeat measurements worth repeating, the one that makes most outcomes surer in front
 * @param drawn what was simulated; empty when nothing was
 */
public record Doubt(
        List<Flip> flips,
        double expected,
        List<Compared> compared,
        List<Repeat> repeat,
        Optional<Certainty.Drawn> drawn) {
    /**
     * One criterion.
     *
     * @param analytic by first-order propagation
     * @param simulated share of draws; empty when nothing was simulated
     * @param chance what is told
     */
    public record Flip(String criterion, double analytic, OptionalDouble simulated, double chance) {}

    public Doubt {
        flips = List.copyOf(flips);
        compared = List.copyOf(compared);
        repeat = List.copyOf(repeat);
    }

    /** The report with these chances in it. */
    public Report mark(Report report) {
        return report.with(mark(report.findings()), certainty());
    }

    /** The findings with their chance of another outcome. */
    public Findings mark(Findings findings) {
        Map<String, Flip> by = new HashMap<>();
        for (Flip f : flips) {
            by.put(f.criterion(), f);
        }
        List<Finding> marked = new ArrayList<>();
        for (Finding f : findings.all()) {
            marked.add(
                    by.containsKey(f.id()) && !f.failed()
                            ? f.withFlip(by.get(f.id()).chance())
                            : f);
        }
        return new Findings(marked, findings.waiverNotes());
    }

    private Certainty certainty() {
        List<RepeatAdvice> advice = new ArrayList<>();
        for (Repeat r : repeat) {
            advice.add(new RepeatAdvice(r.pointer(), r.drop(), r.criteria()));
        }
        return new Certainty(expected, advice, drawn);
    }
}
