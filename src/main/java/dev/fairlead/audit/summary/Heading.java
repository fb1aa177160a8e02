package dev.fairlead.audit.summary;

import dev.fairlead.findings.RulebaseUsed;
import java.util.List;

/**
 * What an audit was of.
 *
 * @param tool version of the program
 * @param day for which all cases were judged; empty for the day that each names
 * @param stage as of which all cases were judged; empty for the stage that each names
 * @param paths what was audited, as it was named
 * @param passedOver files of folders that hold no cases by their names
 */
public record Heading(String tool, RulebaseUsed rulebase, String day, String stage, List<String> paths, List<String> passedOver) {}
