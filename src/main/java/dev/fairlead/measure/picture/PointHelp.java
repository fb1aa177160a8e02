package dev.fairlead.measure.picture;

/**
 * A point that is asked for.
 *
 * @param name short name, which tables of points use too
 * @param title in words
 * @param where it lies and how it is found
 * @param source of the definition
 * @param needed false for points that only add to the rest
 */
public record PointHelp(String name, String title, String where, String source, boolean needed) {}
