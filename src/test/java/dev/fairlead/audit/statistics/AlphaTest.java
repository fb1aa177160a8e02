package dev.fairlead.audit.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Krippendorff's alpha, held to published examples. */
class AlphaTest {
    private static final String[] FOUR = {
        "1 2 3 3 2 1 4 1 2 . . .", "1 2 3 3 2 2 4 1 2 5 . 3", ". 3 3 3 2 3 4 2 2 5 1 .", "1 2 3 3 2 4 4 1 2 5 1 ."
    };

    private static Alpha.Answers answers() {
        Alpha.Answers all = new Alpha.Answers(5);
        for (int u = 0; u < 12; u++) {
            int[] given = new int[5];
            for (String rater : FOUR) {
                String a = rater.split(" ")[u];
                if (!a.equals(".")) {
                    given[Integer.parseInt(a) - 1]++;
                }
            }
            all.nextCase();
            all.question(given);
        }
        return all;
    }

    /** Hayes & Krippendorff's data of four observers and twelve units: 0.743, 0.815, 0.849, 0.797. */
    @Test
    void fourObserversAgreeAsPublished() {
        assertThat(answers().alpha(Alpha.NOMINAL).value()).isCloseTo(0.743, within(5e-4));
        assertThat(answers().alpha(Alpha.ORDINAL).value()).isCloseTo(0.815, within(5e-4));
        assertThat(answers().alpha((a, b, n) -> (a - b) * (double) (a - b)).value())
                .isCloseTo(0.849, within(5e-4));
        assertThat(answers()
                        .alpha((a, b, n) -> Math.pow((a - b) / (double) (a + b + 2), 2))
                        .value())
                .isCloseTo(0.797, within(5e-4));
    }

    /** Krippendorff 2011, Computing Krippendorff's Alpha-Reliability, part A: two observers, ten units, 0.095. */
    @Test
    void twoObserversOfYesAndNoAgreeAsPublished() {
        String meg = "0100000010";
        String owen = "1110010000";
        Alpha.Answers all = new Alpha.Answers(2);
        for (int u = 0; u < 10; u++) {
            int[] given = new int[2];
            given[meg.charAt(u) - '0']++;
            given[owen.charAt(u) - '0']++;
            all.nextCase();
            all.question(given);
        }
        assertThat(all.alpha(Alpha.NOMINAL).value()).isCloseTo(0.095, within(5e-4));
    }

    /** The jackknife over units of the same data. */
    @Test
    void errorLeavesOutOneUnitAtATime() {
        Jackknife a = answers().alpha(Alpha.NOMINAL);
        assertThat(a.error()).isCloseTo(0.14633, within(5e-5));
        assertThat(a.high()).isEqualTo(1);
        assertThat(a.low()).isBetween(0.3, 0.5);
    }

    /** Fleiss 1971: thirty patients, six psychiatrists, five diagnoses; kappa 0.430, alpha 0.4334. */
    @Test
    void sixPsychiatristsAgreeAsPublished() {
        int[][] given = {
            {0, 0, 0, 6, 0}, {0, 3, 0, 0, 3}, {0, 1, 4, 0, 1}, {0, 0, 0, 0, 6}, {0, 3, 0, 3, 0}, {2, 0, 4, 0, 0},
            {0, 0, 4, 0, 2}, {2, 0, 3, 1, 0}, {2, 0, 0, 4, 0}, {0, 0, 0, 0, 6}, {1, 0, 0, 5, 0}, {1, 1, 0, 4, 0},
            {0, 3, 3, 0, 0}, {1, 0, 0, 5, 0}, {0, 2, 0, 3, 1}, {0, 0, 5, 0, 1}, {3, 0, 0, 1, 2}, {5, 1, 0, 0, 0},
            {0, 2, 0, 4, 0}, {1, 0, 2, 0, 3}, {0, 0, 0, 0, 6}, {0, 1, 0, 5, 0}, {0, 2, 0, 1, 3}, {2, 0, 0, 4, 0},
            {1, 0, 0, 4, 1}, {0, 5, 0, 1, 0}, {4, 0, 0, 0, 2}, {0, 2, 0, 4, 0}, {1, 0, 5, 0, 0}, {0, 0, 0, 0, 6}
        };
        Alpha.Answers all = new Alpha.Answers(5);
        for (int[] g : given) {
            all.nextCase();
            all.question(g);
        }
        assertThat(all.alpha(Alpha.NOMINAL).value()).isCloseTo(0.4334, within(5e-5));
    }

    @Test
    void whatCannotBeEstimatedSaysSo() {
        Alpha.Answers one = new Alpha.Answers(3);
        for (int i = 0; i < 20; i++) {
            one.nextCase();
            one.question(3, 0, 0);
        }
        assertThat(one.alpha(Alpha.ORDINAL).estimable()).as("one answer only").isFalse();
        Alpha.Answers few = new Alpha.Answers(3);
        for (int i = 0; i < 4; i++) {
            few.nextCase();
            few.question(1, 1, i);
        }
        assertThat(few.alpha(Alpha.ORDINAL).estimable()).as("four cases").isFalse();
        Alpha.Answers hangs = new Alpha.Answers(3);
        for (int i = 0; i < 9; i++) {
            hangs.nextCase();
            hangs.question(i == 0 ? 0 : 2, i == 0 ? 2 : 0, 0);
        }
        assertThat(hangs.alpha(Alpha.ORDINAL).estimable())
                .as("rests on one case")
                .isFalse();
    }
}
