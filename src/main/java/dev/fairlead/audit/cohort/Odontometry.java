package dev.fairlead.audit.cohort;

import dev.fairlead.model.Side;
import java.util.random.RandomGenerator;

/**
 * Mesiodistal widths of invented children.
 *
 * <p>Means and standard deviations of lower permanent teeth are those of Moyers et al. 1976 (Michigan), from memory and
 * approximate. A size factor is common to all teeth of a child, another to a tooth and its antimere, and the rest
 * belongs to one tooth. The correlation of antimeres, 0.92, is from memory; that of different teeth, 0.42, is chosen so
 * that lower incisors correlate with canine and premolars as Tanaka & Johnston 1974 found (0.65, from memory; 0.57 to
 * 0.79 in later samples).
 */
public final class Odontometry {
    /** Mean and standard deviation of one width, mm. */
    public record Width(double mean, double sd) {}

    /** Widths of one child's lower teeth, mm; positions 1 (central incisor) to 6 (first molar). */
    public record Teeth(double[] left, double[] right) {
        public double width(Side side, int position) {
            return (side == Side.LEFT ? left : right)[position - 1];
        }

        /** Distance of the most unusual width from its mean, in standard deviations. */
        public double farthest(boolean male) {
            double most = 0;
            for (int i = 0; i < left.length; i++) {
                Width w = lower(i + 1, male);
                most = Math.max(most, Math.max(Math.abs(left[i] - w.mean()), Math.abs(right[i] - w.mean())) / w.sd());
            }
            return most;
        }

        /** Sum of the four incisors, mm. */
        public double incisors() {
            return left[0] + left[1] + right[0] + right[1];
        }
    }

    /** Correlation of the widths of two different teeth that are not antimeres. */
    public static final double BETWEEN_TEETH = 0.42;
    /** Correlation of the widths of a tooth and its antimere. */
    public static final double BETWEEN_ANTIMERES = 0.92;
    /** Mean width of the lower second primary molar (Black 1902), and a standard deviation from memory, mm. */
    public static final Width SECOND_PRIMARY_MOLAR = new Width(9.9, 0.45);

    private static final Width[] MALE = {
        new Width(5.5, 0.3),
        new Width(6.0, 0.4),
        new Width(7.0, 0.4),
        new Width(7.1, 0.4),
        new Width(7.3, 0.5),
        new Width(10.8, 0.7)
    };
    private static final Width[] FEMALE = {
        new Width(5.5, 0.3),
        new Width(5.9, 0.4),
        new Width(6.6, 0.4),
        new Width(6.9, 0.4),
        new Width(7.1, 0.4),
        new Width(10.5, 0.6)
    };
    /**
     * Mean widths of upper central incisor to canine (Wheeler; the canine from memory): only their proportions are
     * used.
     */
    private static final double[] UPPER_FRONT = {8.5, 6.5, 7.5};

    private static final double COMMON = Math.sqrt(BETWEEN_TEETH);
    private static final double PAIR = Math.sqrt(BETWEEN_ANTIMERES - BETWEEN_TEETH);
    private static final double OWN = Math.sqrt(1 - BETWEEN_ANTIMERES);

    private Odontometry() {}

    /** Published mean and spread of a lower permanent tooth, mm; position 1 to 6. */
    public static Width lower(int position, boolean male) {
        return (male ? MALE : FEMALE)[position - 1];
    }

    /**
     * Draws the lower teeth of one child; three numbers from {@code draw} for each pair of teeth, after one for the
     * child.
     */
    public static Teeth draw(RandomGenerator draw, boolean male) {
        double child = draw.nextGaussian();
        double[] left = new double[6];
        double[] right = new double[6];
        for (int i = 0; i < left.length; i++) {
            Width w = lower(i + 1, male);
            double pair = COMMON * child + PAIR * draw.nextGaussian();
            left[i] = w.mean() + w.sd() * (pair + OWN * draw.nextGaussian());
            right[i] = w.mean() + w.sd() * (pair + OWN * draw.nextGaussian());
        }
        return new Teeth(left, right);
    }

    /**
     * Upper central incisor, lateral incisor and canine, mm, that give an anterior ratio of so many per cent (Bolton
     * 1958).
     */
    public static double[] upperFront(double lowerSix, double anteriorRatio) {
        double scale = lowerSix / anteriorRatio * 100 / (2 * (UPPER_FRONT[0] + UPPER_FRONT[1] + UPPER_FRONT[2]));
        return new double[] {UPPER_FRONT[0] * scale, UPPER_FRONT[1] * scale, UPPER_FRONT[2] * scale};
    }
}
