package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * How force and stress of one visit follow what was measured, near the values that the beam model was solved for:
 * products of powers, and for the vertical force a sum.
 *
 * <p>The exponents are means over 60 wires drawn from the practical range (arch 41 to 47 by 21 to 27 mm, bends of 0.9
 * to 1.5 mm at the middle, legs of 2.5 to 5 mm, stand-off 0.8 to 2.5 mm), each solved with one measurement a step up
 * and down; from wire to wire they vary by a tenth to a fifth. That is enough for an error, and for variants of a case
 * that differ by errors of measurement: to solve each of thousands would take minutes. What hardly matters (tip,
 * brackets, tube length) is left out.
 */
final class ForceLaw {
    private static final double[] LOW = {-1.29, -0.09, -0.60, -0.60, -0.24, -0.24};
    private static final double[] HIGH = {-2.16, 0.29, -0.50, -0.50, -0.17, -0.17};
    private static final double[] STRESS = {-0.90, -0.17, 0, 0, -0.08, -0.08};
    /** For the bend of the fold with the larger stand-off, where the stress is highest, and for the other one. */
    private static final double HIGHEST_BY_RADIUS = -0.46;

    private static final double OTHER_BY_RADIUS = -0.13;
    /**
     * The side that decides the highest stress passes smoothly from one to the other: the stand-off counts by its mean
     * of this power.
     */
    private static final double DECIDES = 8;

    private static final double LOW_BY_STAND_OFF = 0.60;
    private static final double HIGH_BY_STAND_OFF = 0.66;
    private static final double STRESS_BY_STAND_OFF = 0.79;
    /**
     * Vertical force per mm, as a share of labial force per mm of mean stand-off, with the tail hinging, which is what
     * intrudes.
     */
    private static final double DOWN_BY_HEIGHT = 0.048;

    private static final double DOWN_BY_STAND_OFF = 0.0235;

    /** No draw makes a length less than this share of itself. */
    private static final double LEAST_SHARE = 0.05;

    private final Measured[] shape;
    private final Measured[] standOffs;
    private final Measured[] heights;

    private ForceLaw(Measured[] shape, Measured[] standOffs, Measured[] heights) {
        this.shape = shape;
        this.standOffs = standOffs;
        this.heights = heights;
    }

    /** Of one visit, counted from 0; only where the beam model has answered. */
    static ForceLaw of(Case c, int visit, PatientArch arch) {
        Visit v = c.visits().get(visit);
        return of(c, v.left().standOff(), v.right().standOff(), arch);
    }

    /** Of one case at these stand-offs; what was not measured of the folds has no error. */
    static ForceLaw of(Case c, Measured left, Measured right, PatientArch arch) {
        return new ForceLaw(
                new Measured[] {
                    arch.width(),
                    arch.depth(),
                    FoldShape.bendRadius(c, Side.LEFT),
                    FoldShape.bendRadius(c, Side.RIGHT),
                    FoldShape.leg(c, Side.LEFT),
                    FoldShape.leg(c, Side.RIGHT)
                },
                new Measured[] {left, right},
                new Measured[] {
                    c.hardware().left().aboveBrackets(), c.hardware().right().aboveBrackets()
                });
    }

    /** The same forces with the errors of what was measured, to first order. */
    Forces withErrors(Forces f) {
        return new Forces(
                power(f.low(), LOW, LOW_BY_STAND_OFF),
                power(f.high(), HIGH, HIGH_BY_STAND_OFF),
                stress(f.peakStress()),
                down(f));
    }

    private Measured power(Measured value, double[] exponents, double byStandOff) {
        Measured result = bySize(value, exponents);
        double sum = sum(standOffs);
        for (Measured s : value.known() && sum > 0 ? standOffs : new Measured[0]) {
            result = result.plus(s.chain(0, byStandOff * value.value() / sum, value.unit()));
        }
        return result;
    }

    private Measured bySize(Measured value, double[] exponents) {
        Measured result = value;
        for (int i = 0; i < (value.known() ? shape.length : 0); i++) {
            result = !shape[i].known()
                    ? result
                    : result.plus(shape[i].chain(0, exponents[i] * value.value() / shape[i].value(), value.unit()));
        }
        return result;
    }

    private Measured stress(Measured value) {
        Measured result = bySize(value, forStress());
        for (int i = 0; i < 2; i++) {
            if (value.known() && standOffs[i].value() > 0) {
                result = result.plus(standOffs[i].chain(
                        0, decides(i) * STRESS_BY_STAND_OFF * value.value() / standOffs[i].value(), value.unit()));
            }
        }
        return result;
    }

    private double[] forStress() {
        double[] e = STRESS.clone();
        for (int i = 0; i < 2; i++) {
            e[2 + i] = OTHER_BY_RADIUS + decides(i) * (HIGHEST_BY_RADIUS - OTHER_BY_RADIUS);
        }
        return e;
    }

    /** Share of one side in deciding the highest stress. */
    private double decides(int side) {
        double sum = Math.pow(standOffs[0].value(), DECIDES) + Math.pow(standOffs[1].value(), DECIDES);
        return sum == 0 ? 0.5 : Math.pow(standOffs[side].value(), DECIDES) / sum;
    }

    private double deciding() {
        return Math.pow(Math.pow(standOffs[0].value(), DECIDES) + Math.pow(standOffs[1].value(), DECIDES), 1 / DECIDES);
    }

    private Measured down(Forces f) {
        Measured result = f.intrusivePerIncisor();
        double sum = sum(standOffs);
        if (!result.known() || sum == 0 || !f.high().known()) {
            return result;
        }
        double perMm = f.high().value() / (sum / 2) / 4;
        for (int i = 0; i < 2; i++) {
            result = result.plus(heights[i].chain(0, DOWN_BY_HEIGHT * perMm / 2, Unit.GF))
                    .plus(standOffs[i].chain(0, DOWN_BY_STAND_OFF * perMm, Unit.GF));
        }
        return result;
    }

    /** The forces of another case that differs from this one by little. */
    Forces near(Forces f, ForceLaw other) {
        double share = sum(standOffs) == 0 ? 1 : sum(other.standOffs) / sum(standOffs);
        double worst = deciding() == 0 ? 1 : other.deciding() / deciding();
        return new Forces(
                scaled(f.low(), other.sizes(LOW) / sizes(LOW) * Math.pow(share, LOW_BY_STAND_OFF)),
                scaled(f.high(), other.sizes(HIGH) / sizes(HIGH) * Math.pow(share, HIGH_BY_STAND_OFF)),
                scaled(
                        f.peakStress(),
                        other.sizes(forStress()) / sizes(forStress()) * Math.pow(worst, STRESS_BY_STAND_OFF)),
                shifted(f, other));
    }

    /**
     * Low and high end, gf, and stress, MPa, with all that was measured drawn anew; each source of error once a draw.
     */
    DrawnForces drawn(double low, double high, double stress) {
        List<Measured> all = Stream.of(shape, standOffs).flatMap(Arrays::stream).toList();
        List<String> sources = all.stream()
                .flatMap(m -> m.sources().stream())
                .distinct()
                .sorted()
                .toList();
        Forces f = new Forces(
                Measured.exact(low, Unit.GF),
                Measured.exact(high, Unit.GF),
                Measured.exact(stress, Unit.MPA),
                Measured.notApplicable());
        double[][] found = new double[3][DrawnForces.DRAWS];
        Random random = new Random(DrawnForces.SEED);
        for (int i = 0; i < DrawnForces.DRAWS; i++) {
            Map<String, Double> errors = new HashMap<>();
            sources.forEach(s -> errors.put(s, random.nextGaussian()));
            Forces one = near(f, moved(errors));
            found[0][i] = one.low().value();
            found[1][i] = one.high().value();
            found[2][i] = one.peakStress().value();
        }
        return new DrawnForces(
                DrawnForces.Spread.of(found[0]), DrawnForces.Spread.of(found[1]), DrawnForces.Spread.of(found[2]));
    }

    private ForceLaw moved(Map<String, Double> errors) {
        UnaryOperator<Measured> one = m -> m.known()
                ? m.shifted(Math.max(
                        LEAST_SHARE * m.value() - m.value(),
                        m.sources().stream()
                                .mapToDouble(s -> m.part(s) * Objects.requireNonNull(errors.get(s), s))
                                .sum()))
                : m;
        return new ForceLaw(
                Arrays.stream(shape).map(one).toArray(Measured[]::new),
                Arrays.stream(standOffs).map(one).toArray(Measured[]::new),
                heights);
    }

    private Measured shifted(Forces f, ForceLaw other) {
        Measured down = f.intrusivePerIncisor();
        if (!down.known() || sum(standOffs) == 0 || !f.high().known()) {
            return down;
        }
        double perMm = f.high().value() / (sum(standOffs) / 2) / 4;
        double height = (sum(other.heights) - sum(heights)) / 2;
        return down.shifted(
                perMm * (DOWN_BY_HEIGHT * height + DOWN_BY_STAND_OFF * (sum(other.standOffs) - sum(standOffs))));
    }

    private double sizes(double[] exponents) {
        double product = 1;
        for (int i = 0; i < shape.length; i++) {
            product *= shape[i].known() ? Math.pow(shape[i].value(), exponents[i]) : 1;
        }
        return product;
    }

    private static Measured scaled(Measured m, double factor) {
        return m.known() ? m.shifted(m.value() * (factor - 1)) : m;
    }

    private static double sum(Measured[] pair) {
        return pair[0].value() + pair[1].value();
    }
}
