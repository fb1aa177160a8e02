package dev.fairlead.measure.mechanics.answer;

/**
 * The ends of a force band and the two usual solutions, without what a {@link ForceBand} tells beside them.
 *
 * @param low lowest total labial force over all variants, N
 * @param high highest total labial force over all variants, N
 * @param hinged nominal wire, tail hinging in the tube
 * @param held nominal wire, tail held by the tube
 */
public record ForceEnds(double low, double high, Solution hinged, Solution held) {}
