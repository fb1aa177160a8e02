package dev.fairlead.web.edit;

import dev.fairlead.intake.Problem;

/**
 * What a person typed and the case did not take; it is shown beside the field until it is mended, and is not in the
 * file.
 */
public record Refused(String typed, Problem problem) {}
