package dev.fairlead.audit.cohort;

import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import java.time.LocalDate;

/**
 * The few numbers of an invented child on which all sections of the case rest, so that they agree with each other. All
 * lie well inside the default limits of the rulebase.
 *
 * @param required canine and premolars of one side by Tanaka & Johnston 1974, mm: half the incisor sum and 10.5
 * @param shortage what each side lacks with half of what the incisors lack, mm, left and right
 * @param incisorsLack what the four incisors lack on their own segment, mm
 * @param advance planned forward movement, mm
 * @param steps activations that make up the plan
 * @param standOff stand-off of each activation, mm
 * @param start day on which the wire goes in
 */
record InventedChild(
        Stage stage,
        boolean male,
        Odontometry.Teeth teeth,
        double required,
        double[] shortage,
        double incisorsLack,
        double advance,
        int steps,
        double standOff,
        LocalDate start) {
    /**
     * Gain on each side per mm of advancement, mm: half of what an arch of usual width and depth gains (beta function,
     * 1.53 to 1.64).
     */
    static final double GAIN = 0.8;
    /** First day of the two years over which the cases are spread. */
    static final LocalDate FIRST_DAY = LocalDate.of(2024, 7, 1);

    private static final int DAYS = 730;
    /**
     * Sum of the incisors between which a child is kept, mm: there the two usual predictions agree within half a
     * millimetre.
     */
    static final double LEAST_INCISORS = 20.5;

    static final double MOST_INCISORS = 25;
    /** The most unusual width of a child, in standard deviations, and the largest difference of antimeres, mm. */
    static final double MOST_UNUSUAL = 2.3;

    static final double MOST_APART = 0.25;

    static InventedChild draw(Draws d) {
        boolean male = d.chance(0.5);
        Odontometry.Teeth teeth;
        double sum;
        do {
            teeth = closer(Odontometry.draw(d.random(), male));
            sum = teeth.incisors();
        } while (sum < LEAST_INCISORS || sum > MOST_INCISORS || teeth.farthest(male) > MOST_UNUSUAL);
        double required = sum / 2 + 10.5;
        double mean = d.uniform(1.1, 2.1);
        double skew = d.uniform(-0.15, 0.15);
        double lack = d.uniform(0.2, 0.8);
        // near enough to the need of either side, whatever its arch gains for a millimetre
        double advance = Draws.tenth(mean / GAIN + 0.15);
        int steps = Math.max(2, (int) Math.ceil(advance));
        Stage stage = d.one(
                Stage.RECORDS,
                Stage.INDICATION,
                Stage.INDICATION,
                Stage.READINESS,
                Stage.BENCH,
                Stage.INSERTION,
                Stage.ACTIVATION,
                Stage.ACTIVATION,
                Stage.HOLDING,
                Stage.HOLDING,
                Stage.HOLDING);
        return new InventedChild(
                stage,
                male,
                teeth,
                required,
                new double[] {mean + skew, mean - skew},
                lack,
                advance,
                steps,
                Draws.tenth(advance / steps),
                FIRST_DAY.plusDays(d.whole(0, DAYS - 1)));
    }

    /** Antimeres of a child without a fault differ by no more than a quarter of a millimetre. */
    private static Odontometry.Teeth closer(Odontometry.Teeth t) {
        double[] right = t.right().clone();
        for (int i = 0; i < right.length; i++) {
            right[i] = t.left()[i] + Math.max(-MOST_APART, Math.min(MOST_APART, right[i] - t.left()[i]));
        }
        return new Odontometry.Teeth(t.left(), right);
    }

    /** Distal of the lateral incisor to mesial of the first molar before treatment, mm. */
    double available(Side side) {
        return required - shortage[side.ordinal()] + incisorsLack / 2;
    }
}
