package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Case;
import org.junit.jupiter.api.Test;

/** What must hold for the misfit of any form: geometry alone decides it. */
class FormMisfitTest {
    private static CaseBuilder wire(double molars, double canines, double depth) {
        return SampleCase.full()
                .set("/wire/formMolarWidth", molars)
                .set("/wire/formCanineWidth", canines)
                .set("/wire/formDepth", depth);
    }

    private static FormMisfit of(CaseBuilder b) {
        Case c = b.build();
        return FormMisfit.of(c, PatientArch.of(c));
    }

    @Test
    void aFormFitsItself() {
        FormMisfit m = of(wire(44, 26, 24));
        assertThat(m.rms().value()).isEqualTo(0, within(1e-6));
        assertThat(m.worst().value()).isEqualTo(0, within(1e-6));
        // it is measured to 0.2 mm, so that it may not fit after all
        assertThat(m.rms().sd()).isPositive();
    }

    @Test
    void awayFromTheArchItGrows() {
        double rms = 0;
        double worst = 0;
        for (double more = 1; more <= 5; more++) {
            FormMisfit wide = of(wire(44 + more, 26 + more * 26 / 44, 24));
            assertThat(wide.rms().value()).as("wider by " + more).isGreaterThan(rms);
            assertThat(wide.worst().value())
                    .as("wider by " + more)
                    .isGreaterThan(worst)
                    .isGreaterThanOrEqualTo(wide.rms().value());
            rms = wide.rms().value();
            worst = wide.worst().value();
        }
    }

    /** Half of the extra width lies on each side: a wire wider by 2 mm all along is off by no more than 1 mm across. */
    @Test
    void evenWideningIsHalvedBetweenTheSides() {
        FormMisfit m = of(wire(46, 26.0 * 46 / 44, 24));
        assertThat(m.worst().value()).isBetween(0.5, 1.0 + 1e-6);
    }

    @Test
    void aMirroredMouthHasTheSameMisfit() {
        CaseBuilder left = wire(45, 27, 24.5);
        CaseBuilder right = wire(45, 27, 24.5);
        int[] teeth = {46, 44, 43, 42, 41, 31, 32, 33, 34, 36};
        double[] x = {-22.3, -17.6, -13.2, -9.0, -3.0, 2.8, 8.6, 13.5, 17.9, 22.6};
        double[] y = {0, 11.5, 18.2, 21.9, 23.8, 23.9, 22.3, 17.9, 11.0, 0.2};
        for (int i = 0; i < teeth.length; i++) {
            point(left, i, teeth[i], x[i], y[i]);
            int k = teeth.length - 1 - i;
            point(right, k, teeth[k], -x[i], y[i]);
        }
        FormMisfit one = of(left);
        FormMisfit other = of(right);
        assertThat(other.rms().value()).isEqualTo(one.rms().value(), within(1e-5));
        assertThat(other.worst().value()).isEqualTo(one.worst().value(), within(1e-4));
        assertThat(one.rms().value()).isPositive();
    }

    private static void point(CaseBuilder b, int i, int tooth, double x, double y) {
        String at = "/landmarks/" + i;
        b.set(at + "/tooth", tooth).set(at + "/x", x).set(at + "/y", y);
    }

    @Test
    void withoutAFormNothingIsSaid() {
        FormMisfit m = of(wire(44, 26, 24).without("/wire/formCanineWidth").without("/arch/canineDepth"));
        assertThat(m.rms().missing()).containsExactlyInAnyOrder("/wire/formCanineWidth", "/arch/canineDepth");
        assertThat(m.laid()).isEmpty();
    }
}
