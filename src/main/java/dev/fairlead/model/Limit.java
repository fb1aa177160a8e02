package dev.fairlead.model;

/** A named threshold: its value, its unit, and whether a value exactly at the limit still passes. */
public record Limit(String name, double value, Unit unit, boolean inclusive) {
    public Limit {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("limit " + name + " must be a finite number");
        }
    }
}
