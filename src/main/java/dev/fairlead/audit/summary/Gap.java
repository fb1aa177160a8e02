package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.Rate;

/**
 * A fact that is missing in some cases.
 *
 * @param pointer where it stands in a case, with {@code *} for entries of lists
 * @param fact its number, for counts of residents
 * @param rate missing among the cases in which it is asked
 */
public record Gap(String pointer, int fact, Rate rate) {}
