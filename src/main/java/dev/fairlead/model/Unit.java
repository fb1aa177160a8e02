package dev.fairlead.model;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Units of the case model; each belongs to one dimension and converts exactly to that dimension's base unit. */
public enum Unit {
    MM("mm", Dimension.LENGTH, 1),
    INCH("in", Dimension.LENGTH, 25.4),
    DEGREE("°", Dimension.ANGLE, 1),
    PERCENT("%", Dimension.SHARE, 1),
    GF("gf", Dimension.FORCE, 1),
    /** 1 gf = 0.00980665 N (standard gravity, CGPM 1901). */
    NEWTON("N", Dimension.FORCE, 1 / 0.00980665),
    CENTINEWTON("cN", Dimension.FORCE, 0.01 / 0.00980665),
    MPA("MPa", Dimension.STRESS, 1),
    GPA("GPa", Dimension.STRESS, 1000),
    YEAR("y", Dimension.AGE, 1),
    MONTH("months", Dimension.TIME, 365.2425 / 12),
    WEEK("weeks", Dimension.TIME, 7),
    DAY("days", Dimension.TIME, 1),
    COUNT("", Dimension.COUNT, 1),
    /** A plain ratio, such as a stiffness ratio. */
    RATIO("", Dimension.RATIO, 1);

    /** What a unit measures; only units of one dimension convert into each other. */
    public enum Dimension {
        LENGTH,
        ANGLE,
        SHARE,
        FORCE,
        STRESS,
        AGE,
        TIME,
        COUNT,
        RATIO
    }

    private final String symbol;
    private final Dimension dimension;
    private final double inBase;

    Unit(String symbol, Dimension dimension, double inBase) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.inBase = inBase;
    }

    /** The unit of that symbol, or of that name where it has none; null when there is no such unit. */
    public static @Nullable Unit of(String written) {
        for (Unit unit : values()) {
            if (unit.symbol.equals(written)
                    || unit.name().toLowerCase(Locale.ROOT).equals(written)) {
                return unit;
            }
        }
        return null;
    }

    /** The symbol printed behind a value; empty for counts and ratios. */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Converts a value of this unit into {@code other}; throws if the dimensions differ. */
    public double to(Unit other, double value) {
        if (dimension != other.dimension) {
            throw new IllegalArgumentException("cannot turn " + name() + " into " + other.name());
        }
        return this == other ? value : value * inBase / other.inBase;
    }
}
