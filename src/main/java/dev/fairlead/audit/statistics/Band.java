package dev.fairlead.audit.statistics;

/** Between which values chance alone keeps something, and how much of chance is meant. */
public record Band(double low, double high) {
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
