/**
 * The only package that knows the rule engine: facts in, verdicts out; catalogue, thresholds, loading and compiling of
 * the rulebase.
 */
package dev.fairlead.rules;
