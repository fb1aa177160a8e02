package dev.fairlead.report.html;

import java.util.List;

/**
 * A number that a presentation opens with.
 *
 * @param values with error and unit, or "unknown"; one for each side where sides differ
 * @param remark what it stands beside; may be empty
 */
public record KeyNumber(String label, List<String> values, String remark) {}
