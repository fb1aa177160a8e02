package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    @Test
    void allThatIsMissingIsNamedOnce() {
        FormMisfit m = of(SampleCase.full()
                .without("/arch/molarWidth")
                .without("/arch/canineWidth")
                .without("/wire/formDepth")
                .without("/wire/formMolarWidth"));
        for (Measured misfit : List.of(m.rms(), m.worst())) {
            assertThat(misfit.missing())
                    .containsExactlyInAnyOrder(
                            "/arch/molarWidth", "/arch/canineWidth", "/wire/formDepth", "/wire/formMolarWidth");
        }
    }

    /** A wire that is bent without a form has none to misfit; nothing is missing then. */
    @ParameterizedTest
    @ValueSource(strings = {"/wire/formMolarWidth", "/wire/formDepth", "/wire/formCanineWidth", "/arch/canineWidth"})
    void whereAMeasureDoesNotApplyNeitherDoesTheMisfit(String pointer) {
        FormMisfit m = of(SampleCase.full().set(pointer, CaseBuilder.NOT_APPLICABLE));
        assertThat(m.rms().applies()).isFalse();
        assertThat(m.worst().applies()).isFalse();
        assertThat(m.laid()).isEmpty();
    }

    /**
     * First-order error: the misfits that each measure, larger by its SD, gives when the wire is laid anew, less the
     * misfit here, added in squares.
     */
    @Test
    void errorsOfArchAndWireAddUpInTheMisfit() {
        CaseBuilder b = wire(47, 27, 25.5);
        FormMisfit here = of(b);
        Case c = b.build();
        Map<String, Measured> inputs = Map.of(
                "/arch/molarWidth", c.arch().molarWidth(),
                "/arch/molarDepth", c.arch().molarDepth(),
                "/arch/canineWidth", c.arch().canineWidth(),
                "/arch/canineDepth", c.arch().canineDepth(),
                "/wire/formMolarWidth", c.wire().formMolarWidth(),
                "/wire/formDepth", c.wire().formDepth(),
                "/wire/formCanineWidth", c.wire().formCanineWidth());
        double rms = 0;
        double worst = 0;
        for (Map.Entry<String, Measured> input : inputs.entrySet()) {
            double moved = input.getValue().value() + input.getValue().sd();
            FormMisfit there = of(b.copy().set(input.getKey(), moved));
            rms += Math.pow(there.rms().value() - here.rms().value(), 2);
            worst += Math.pow(there.worst().value() - here.worst().value(), 2);
        }
        assertThat(here.rms().sd()).isEqualTo(Math.sqrt(rms), within(0.05 * Math.sqrt(rms)));
        assertThat(here.worst().sd()).isEqualTo(Math.sqrt(worst), within(0.05 * Math.sqrt(worst)));
        assertThat(here.laid().orElseThrow().laying().misfit().rms())
                .isEqualTo(here.rms().value());
    }

    /** No place is best for a wire folded to a hairpin: only the bench can tell. */
    @Test
    void aFormThatFitsNowhereBestHasToBeTriedOnTheModel() {
        FormMisfit m = of(wire(4, 3.9, 11));
        assertThat(m.rms().missing()).containsExactly("/bench/misfitRms");
        assertThat(m.worst().missing()).containsExactly("/bench/misfitWorst");
        assertThat(m.laid()).isEmpty();
    }
}
