package dev.fairlead.rules.verdict;

/**
 * A failure of the program or of a rule, not of the case.
 *
 * @param criterion the criterion that could not be judged; empty when it is none
 */
public record OwnError(String criterion, String message) {}
