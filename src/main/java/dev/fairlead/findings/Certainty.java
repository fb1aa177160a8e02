package dev.fairlead.findings;

import java.util.List;
import java.util.Optional;

/**
 * How sure the findings of a case are as a whole, given the errors of its measurements.
 *
 * @param expectedFlips expected number of criteria that would end differently
 * @param repeats measurements worth taking again, the one that makes most outcomes surer in front
 * @param drawn what was simulated; empty when chances come from first-order propagation alone
 */
public record Certainty(double expectedFlips, List<RepeatAdvice> repeats, Optional<Drawn> drawn) {
    /** How the chances are meant; for every reader of them. */
    public static final String MEANING =
            "The chance that the true values of what was measured would give another outcome, when each"
                    + " measurement is off by a normal error of the size stated or assumed for it. Errors of prediction equations and of models are not"
                    + " in it: measuring again does not change them. A second reading, which has an error of its own, differs from the first more"
                    + " often than that.";

    /** What was simulated: draws, seed, and how many measurements were varied in each. */
    public record Drawn(int draws, long seed, int measurements) {}

    public Certainty {
        repeats = List.copyOf(repeats);
    }
}
