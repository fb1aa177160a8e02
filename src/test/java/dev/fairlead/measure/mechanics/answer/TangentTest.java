package dev.fairlead.measure.mechanics.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.element.ChainMatrix;
import dev.fairlead.measure.mechanics.element.CorotationalElement;
import dev.fairlead.measure.mechanics.element.FrameState;
import dev.fairlead.measure.mechanics.element.Rotations;
import dev.fairlead.measure.mechanics.element.SectionStiffness;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The force is the gradient of the energy and the tangent its second derivative, by central differences over random
 * large states.
 */
class TangentTest {
    private static final SectionStiffness SECTION = new SectionStiffness(3.6e4, 588, 310, 420);
    private final CorotationalElement element = new CorotationalElement();
    private final Random random = new Random(7);

    private final BeamFrame frame =
            BeamFrame.chain(new double[] {0.3, -0.2, 0.1, 0.9, 0.4, 0.6}, SECTION, new double[] {0.2, -0.3, 1});

    private FrameState randomState(double turn, double local) {
        FrameState state = FrameState.atRest(frame);
        double[] both = {random.nextGaussian() * turn, random.nextGaussian() * turn, random.nextGaussian() * turn};
        for (int n = 0; n < 2; n++) {
            Rotations.rotate(state.rotation, 9 * n, both[0], both[1], both[2]);
        }
        double[] r = state.rotation;
        for (int i = 0; i < 3; i++) {
            double along = 0;
            for (int k = 0; k < 3; k++) {
                along += r[3 * i + k] * (frame.rest[3 + k] - frame.rest[k]);
            }
            state.position[3 + i] = state.position[i] + along;
        }
        double[] step = new double[12];
        for (int i = 0; i < 12; i++) {
            step[i] = random.nextGaussian() * local * (i % 6 < 3 ? 0.3 : 1);
        }
        state.advance(step);
        return state;
    }

    private double energy(FrameState state, double[] step) {
        FrameState s = state.copy();
        s.advance(step);
        element.force(frame, 0, s);
        return element.beam.energy;
    }

    private static double[] unit(int i, double h) {
        double[] d = new double[12];
        d[i] = h;
        return d;
    }

    @Test
    void forceIsTheGradientOfTheEnergy() {
        double h = 1e-5;
        for (int trial = 0; trial < 50; trial++) {
            FrameState s = randomState(1.0, 0.15);
            double[] numeric = new double[12];
            for (int i = 0; i < 12; i++) {
                numeric[i] = (energy(s, unit(i, h)) - energy(s, unit(i, -h))) / (2 * h);
            }
            element.force(frame, 0, s);
            double scale = max(element.force);
            for (int i = 0; i < 12; i++) {
                assertThat(Math.abs(element.force[i] - numeric[i]) / scale)
                        .as("trial %d, %d", trial, i)
                        .isLessThan(1e-7);
            }
        }
    }

    @Test
    void tangentIsTheSymmetricPartOfTheForcesRateOfChange() {
        double h = 1e-6;
        for (int trial = 0; trial < 50; trial++) {
            FrameState s = randomState(1.0, 0.15);
            double[][] rate = new double[12][12];
            for (int c = 0; c < 12; c++) {
                FrameState plus = s.copy();
                plus.advance(unit(c, h));
                element.force(frame, 0, plus);
                double[] up = element.force.clone();
                FrameState minus = s.copy();
                minus.advance(unit(c, -h));
                element.force(frame, 0, minus);
                for (int i = 0; i < 12; i++) {
                    rate[i][c] = (up[i] - element.force[i]) / (2 * h);
                }
            }
            double[] tangent = tangent(s);
            double scale = max(tangent);
            for (int i = 0; i < 12; i++) {
                for (int c = 0; c < 12; c++) {
                    double symmetric = 0.5 * (rate[i][c] + rate[c][i]);
                    assertThat(Math.abs(tangent[12 * i + c] - symmetric) / scale)
                            .as("trial %d, %d %d", trial, i, c)
                            .isLessThan(1e-7);
                }
            }
        }
    }

    /** 12 x 12, out of the blocks of a chain of one element. */
    private double[] tangent(FrameState s) {
        element.force(frame, 0, s);
        element.tangent(frame, 0, false, null);
        var m = new ChainMatrix(new boolean[12]);
        element.stiffness.addTo(m, 0);
        double[] all = new double[144];
        for (int i = 0; i < 12; i++) {
            for (int c = 0; c <= i; c++) {
                double v = i < 6 || c >= 6 ? m.own[36 * (i / 6) + 6 * (i % 6) + c % 6] : m.next[6 * (i - 6) + c];
                all[12 * i + c] = v;
                all[12 * c + i] = v;
            }
        }
        return all;
    }

    private static double max(double[] a) {
        double m = 0;
        for (double v : a) {
            m = Math.max(m, Math.abs(v));
        }
        return m;
    }
}
