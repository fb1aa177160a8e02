/**
 * The only part that knows the rule engine, in four rooms that are read once: {@code catalogue} (criteria, thresholds,
 * sources as data), {@code language} (what a rule may say), {@code engine} (from rules to what they say of facts),
 * {@code verdict} (what that means for a case).
 */
@NullMarked
package dev.fairlead.rules;

import org.jspecify.annotations.NullMarked;
