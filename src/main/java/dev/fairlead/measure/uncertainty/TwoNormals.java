package dev.fairlead.measure.uncertainty;

import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.special.Erf;
import org.hipparchus.util.Pair;

/** Areas of the standard normal distribution of two correlated variables (Drezner &amp; Wesolowsky 1990, after Plackett 1954). */
final class TwoNormals {
    private static final Pair<double[], double[]> RULE = new LegendreRuleFactory().getRule(40);
    /** Beyond so many standard deviations nothing is left that a probability could show. */
    private static final double FAR = 9;

    private TwoNormals() {}

    /** Probability that the first lies between {@code a} and {@code b} and the second between {@code c} and {@code d}; ends may be infinite. */
    static double inside(double a, double b, double c, double d, double correlation) {
        return Math.max(0, below(b, d, correlation) - below(a, d, correlation) - below(b, c, correlation) + below(a, c, correlation));
    }

    /** Probability that the first lies below {@code h} and the second below {@code k}. */
    static double below(double h, double k, double correlation) {
        if (h < -FAR || k < -FAR) {
            return 0;
        }
        double apart = one(h) * one(k);
        if (h > FAR || k > FAR || correlation == 0) {
            return apart;
        }
        double end = Math.asin(Math.max(-1, Math.min(1, correlation)));
        double joint = 0;
        for (int i = 0; i < RULE.getFirst().length; i++) {
            double t = end / 2 * (1 + RULE.getFirst()[i]);
            double cos = Math.cos(t);
            joint += RULE.getSecond()[i] * Math.exp(-(h * h + k * k - 2 * h * k * Math.sin(t)) / (2 * cos * cos));
        }
        return Math.max(0, Math.min(1, apart + joint * end / 2 / (2 * Math.PI)));
    }

    /** Probability that one standard normal variable lies below {@code z}. */
    static double one(double z) {
        return Erf.erfc(-z / Math.sqrt(2)) / 2;
    }
}
