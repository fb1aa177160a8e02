package dev.fairlead.audit.summary;

import dev.fairlead.findings.RulebaseUsed;
import java.util.List;

/**
 * What an audit was of.
 *
 * @param tool version of the program
 * @param day for which all cases were judged; empty for the day that each names
 * @param stage as of which all cases were judged; empty for the stage that each names
 * @param forces whether the beam model of the wire was solved
 * @param paths what was audited, as it was named
 * @param passedOver files of folders that hold no cases by their names
 */
public record Heading(
        String tool,
        RulebaseUsed rulebase,
        String day,
        String stage,
        boolean forces,
        List<String> paths,
        List<String> passedOver) {
    /** What is to be said where the beam model was left out. */
    public static final String NO_FORCES =
            "The beam model of the wire was left out: what it alone can tell is not assessed.";
}
