package dev.fairlead.measure.uncertainty;

/**
 * Areas of the standard normal distribution of two correlated variables (Drezner &amp; Wesolowsky 1990, after Plackett
 * 1954).
 */
final class TwoNormals {
    /**
     * The upper half of the nodes of the Gauss-Legendre rule of 40 points (Abramowitz &amp; Stegun, table 25.4); the
     * others mirror them.
     */
    static final double[] NODES = {
        0.03877241750605082, 0.11608407067525521, 0.1926975807013711, 0.2681521850072537, 0.3419940908257585,
        0.413779204371605, 0.4830758016861787, 0.5494671250951282, 0.6125538896679803, 0.6719566846141796,
        0.7273182551899271, 0.7783056514265194, 0.8246122308333117, 0.8659595032122596, 0.9020988069688743,
        0.9328128082786765, 0.9579168192137917, 0.9772599499837743, 0.990726238699457, 0.9982377097105593
    };

    static final double[] WEIGHTS = {
        0.07750594797842482, 0.07703981816424803, 0.07611036190062619, 0.07472316905796833, 0.07288658239580408,
        0.07061164739128681, 0.06791204581523394, 0.06480401345660108, 0.06130624249292891, 0.05743976909939157,
        0.05322784698393679, 0.04869580763507221, 0.04387090818567333, 0.03878216797447199, 0.03346019528254787,
        0.02793700698002337, 0.02224584919416689, 0.016421058381907876, 0.010498284531152905, 0.004521277098533098
    };
    /** Beyond so many standard deviations nothing is left that a probability could show. */
    private static final double FAR = 9;

    private TwoNormals() {}

    /**
     * Probability that the first lies between {@code a} and {@code b} and the second between {@code c} and {@code d};
     * ends may be infinite.
     */
    static double inside(double a, double b, double c, double d, double correlation) {
        return Math.max(
                0,
                below(b, d, correlation)
                        - below(a, d, correlation)
                        - below(b, c, correlation)
                        + below(a, c, correlation));
    }

    /** Probability that the first lies below {@code h} and the second below {@code k}. */
    static double below(double h, double k, double correlation) {
        if (h < -FAR || k < -FAR) {
            return 0;
        }
        double apart = NormalTail.below(h) * NormalTail.below(k);
        if (h > FAR || k > FAR || correlation == 0) {
            return apart;
        }
        double half = Math.asin(Math.max(-1, Math.min(1, correlation))) / 2;
        double joint = 0;
        for (int i = 0; i < NODES.length; i++) {
            joint += WEIGHTS[i] * (density(h, k, half * (1 - NODES[i])) + density(h, k, half * (1 + NODES[i])));
        }
        return Math.max(0, Math.min(1, apart + joint * half / (2 * Math.PI)));
    }

    /** Up to a constant, the density at that point where the correlation is the sine of {@code angle}. */
    private static double density(double h, double k, double angle) {
        double cos = Math.cos(angle);
        return Math.exp(-(h * h + k * k - 2 * h * k * Math.sin(angle)) / (2 * cos * cos));
    }
}
