package dev.fairlead.audit.statistics;

/** Between which values chance alone keeps something. */
public record Band(double low, double high) {
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
