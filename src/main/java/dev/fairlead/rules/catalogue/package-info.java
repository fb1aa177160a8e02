/** Criteria, thresholds and sources of a rulebase, as data. */
@NullMarked
package dev.fairlead.rules.catalogue;

import org.jspecify.annotations.NullMarked;
