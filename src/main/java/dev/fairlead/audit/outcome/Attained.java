package dev.fairlead.audit.outcome;

/**
 * One number of a case that reached holding: what was predicted of it, and what was measured.
 *
 * @param predicted in the unit of {@code kind}
 * @param sd standard deviation that the program states for the prediction
 * @param achieved as measured or counted
 * @param error standard error of that reading; 0 of a count
 */
public record Attained(Kind kind, double predicted, double sd, double achieved, double error) {
    /** What is predicted. */
    public enum Kind {
        SPACE("space, mean of both sides", "mm", 0.5),
        INCLINATION("lower incisor to mandibular plane", "°", 2),
        OVERJET("overjet", "mm", 0.5),
        VISITS("activations", "", 1),
        MONTHS("months from the first activation to the impression", "", 1),
        /** Only for the clinic's own figures: ratios and shares. */
        TIPPING("tipping over the predicted", "", 0.1),
        RATE("share of the stand-off run down between visits", "", 0.1),
        GAIN("gain of space over the predicted", "", 0.1);

        private final String words;
        private final String unit;
        private final double step;

        Kind(String words, String unit, double step) {
            this.words = words;
            this.unit = unit;
            this.step = step;
        }

        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }

        /** Width of the classes of predicted values in which predictions are held against measurements. */
        double step() {
            return step;
        }

        /** False for what serves a clinic's own figures alone. */
        public boolean told() {
            return ordinal() < TIPPING.ordinal();
        }
    }

    /** Achieved less predicted. */
    public double difference() {
        return achieved - predicted;
    }

    /** The difference over the standard deviation that the program states, the error of the last reading included. */
    public double standardised() {
        return difference() / Math.hypot(sd, error);
    }
}
