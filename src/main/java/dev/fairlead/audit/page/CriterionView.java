package dev.fairlead.audit.page;

import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.report.picture.Picture;
import java.util.Optional;

/**
 * A criterion on the page.
 *
 * @param asks what it demands, with the thresholds in force
 * @param funnel by resident; empty where too few warnings or residents are there to draw
 * @param periods by time; empty likewise
 */
public record CriterionView(CriterionCount count, String asks, Optional<Picture> funnel, Optional<Picture> periods) {}
