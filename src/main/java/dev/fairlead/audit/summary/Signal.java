package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.audit.statistics.Ratio;
import dev.fairlead.audit.statistics.ShareDifference;

/**
 * A resident who has more of something than the others.
 *
 * @param item criterion, or pointer of a fact; empty for all together
 * @param seen warnings, stops or missing facts of the resident
 * @param expected what would be expected of the same cases if all were alike
 * @param own share of the resident, for single items; none for all together
 * @param others the same of all others
 * @param ratio to the others, for burden, stops and missing facts together; {@link Ratio#NONE} for single items
 * @param p chance of as much when all are alike
 * @param out stands out; else to watch
 */
public record Signal(
        Family family,
        String resident,
        String item,
        double seen,
        double expected,
        Rate own,
        Rate others,
        Ratio ratio,
        double p,
        boolean out) {
    /** What is compared, each with a budget of false alarms of its own. */
    public enum Family {
        BURDEN("warnings in all"),
        STOPS("stops in all"),
        SAFETY("safety criterion"),
        CRITERION("criterion"),
        MISSING("missing facts in all"),
        FACT("fact missing");

        private final String words;

        Family(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** True for families in which everything is taken together. */
        public boolean together() {
            return this == BURDEN || this == STOPS || this == MISSING;
        }
    }

    /** How far the resident's share lies above the others'. */
    public ShareDifference difference() {
        return ShareDifference.of(own, others);
    }
}
