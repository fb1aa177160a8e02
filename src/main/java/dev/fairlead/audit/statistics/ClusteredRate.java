package dev.fairlead.audit.statistics;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A share of things that come in cases, with the score interval of Wilson 1927 for the number of things that they are
 * worth (Rao & Scott 1992, doi 10.2307/2532311, from memory; Korn & Graubard 1998): what is missing in one case goes
 * together.
 *
 * @param count how many
 * @param of out of how many
 * @param cases in how many cases
 * @param effect by how much the cases' likeness widens the variance; 1 for none
 */
public record ClusteredRate(long count, long of, long cases, double effect, double low, double high) {
    private static final double Z = 1.959963984540054;

    /** Sums over cases, as they come; a case with nothing to count is passed over. */
    public static final class Sums {
        private long cases;
        private long count;
        private long of;
        private double gg;
        private double gm;
        private double mm;

        /** One case: {@code given} out of {@code asked}. */
        public void add(long given, long asked) {
            if (asked > 0) {
                cases++;
                count += given;
                of += asked;
                gg += (double) given * given;
                gm += (double) given * asked;
                mm += (double) asked * asked;
            }
        }

        /** The cases of another as well. */
        public void add(Sums other) {
            cases += other.cases;
            count += other.count;
            of += other.of;
            gg += other.gg;
            gm += other.gm;
            mm += other.mm;
        }

        public ClusteredRate rate() {
            if (cases == 0) {
                return new ClusteredRate(0, 0, 0, 1, 0, 1);
            }
            double p = (double) count / of;
            double worth = cases;
            double effect = 1;
            if (cases > 1 && count > 0 && count < of) {
                double v = cases / (cases - 1.0) * (gg - 2 * p * gm + p * p * mm) / ((double) of * of);
                effect = Math.max(1, v * of / (p * (1 - p)));
                double t = new TDistribution(cases - 1).inverseCumulativeProbability(0.975);
                worth = of / effect * (Z / t) * (Z / t);
            }
            double centre = (p + Z * Z / (2 * worth)) / (1 + Z * Z / worth);
            double reach = Z / (1 + Z * Z / worth) * Math.sqrt(p * (1 - p) / worth + Z * Z / (4 * worth * worth));
            return new ClusteredRate(
                    count, of, cases, effect, Math.max(0, centre - reach), Math.min(1, centre + reach));
        }
    }

    public boolean none() {
        return of == 0;
    }

    /** The share, 0 to 1; NaN of nothing. */
    public double share() {
        return none() ? Double.NaN : (double) count / of;
    }
}
