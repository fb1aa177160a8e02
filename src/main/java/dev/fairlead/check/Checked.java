package dev.fairlead.check;

import dev.fairlead.findings.Report;
import dev.fairlead.measure.Worked;
import dev.fairlead.model.Case;
import dev.fairlead.rules.catalogue.Catalogue;
import java.util.Optional;

/**
 * A case after its check.
 *
 * @param subject the case as it was read
 * @param report what is told of it
 * @param worked the numbers behind the report, for pictures
 * @param catalogue criteria, thresholds in force and bibliography of the rulebase that judged
 * @param doubt how sure the findings are, number by number; empty when that was not asked
 */
public record Checked(Case subject, Report report, Worked worked, Catalogue catalogue, Optional<Doubt> doubt) {}
