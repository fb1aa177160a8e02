package dev.fairlead.findings;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Threshold;

/** A known value of this case beside the threshold that it was held against. */
public record SeenValue(Measured measured, Threshold threshold) {
    public SeenValue {
        if (!measured.known()) {
            throw new IllegalArgumentException("what is not known cannot be held against " + threshold.name());
        }
    }

    /** Full name of the threshold. */
    public String limitName() {
        return threshold.name();
    }

    /** The value in {@link #unit()}. */
    public double value() {
        return measured.value();
    }

    /** One standard deviation in {@link #unit()}; 0 when the value is exact. */
    public double error() {
        return measured.sd();
    }

    /** The unit of the threshold, which is that of the value. */
    public Unit unit() {
        return threshold.unit();
    }

    /** Value of the threshold in {@link #unit()}. */
    public double limit() {
        return threshold.value();
    }

    /** Distance to the limit in {@link #unit()}, positive on the side that passes. */
    public double margin() {
        return threshold.bound() == Threshold.Bound.UPPER ? limit() - value() : value() - limit();
    }

    /** True when the error reaches across the limit. */
    public boolean close() {
        double sd = error();
        return sd > 0 && Math.abs(margin()) <= sd;
    }

    /** The value with its error and unit, as written for people. */
    public String text() {
        return Numbers.beside(measured, threshold);
    }

    /** How far it is from the limit, without a sign, as written for people. */
    public String marginText() {
        return Numbers.apart(Math.abs(margin()), threshold);
    }

    /** The limit with its unit, as written for people. */
    public String limitText() {
        return Numbers.text(threshold);
    }
}
