package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import java.util.List;
import java.util.function.Function;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * The powers by which forces follow what was measured, against solutions of the whole model one step to either side.
 */
class ForceLawTest {
    private static final BeamForces MODEL = new BeamForces();
    private static final List<String> MEASURED = List.of(
            "/visits/0/left/standOff",
            "/visits/0/right/standOff",
            "/bench/left/bendRadius",
            "/bench/right/bendRadius",
            "/bench/left/length",
            "/arch/molarWidth");

    private static CaseBuilder base() {
        return BaseCase.of()
                .set("/visits/0/left/standOff", 1.6)
                .set("/visits/0/right/standOff", 1.4)
                .set("/wire/modulus", 180);
    }

    private static Forces at(CaseBuilder b) {
        return MODEL.at(b.build(), 0, Workbook.none());
    }

    private static double value(CaseBuilder b, String pointer) {
        return ((Number) b.values().get(pointer)).doubleValue();
    }

    /** An error need not be known better than to a quarter. */
    private static void slopes(Function<Forces, Measured> what, double slack) {
        CaseBuilder b = base();
        Measured m = what.apply(at(b));
        for (String pointer : MEASURED) {
            double step = pointer.endsWith("bendRadius") ? 0.1 : 0.4;
            double x = value(b, pointer);
            double up = what.apply(at(b.copy().set(pointer, x + step))).value();
            double down = what.apply(at(b.copy().set(pointer, x - step))).value();
            double sd = pointer.endsWith("standOff") ? 0.2 : pointer.startsWith("/bench") ? 0.2 : 0.3;
            double part = (up - down) / (2 * step) * sd;
            // of what matters little only the size is held to
            assertThat(m.part(pointer)).as(pointer).isEqualTo(part, within(Math.abs(part) * slack + 0.01 * m.value()));
        }
    }

    @Test
    void errorsAreThoseOfTheModel() {
        slopes(Forces::low, 0.3);
        slopes(Forces::high, 0.3);
        slopes(Forces::peakStress, 0.35);
    }

    @Test
    void variantsFollowTheModelClosely() {
        Case c = base().build();
        NearForces near = new NearForces(c, MODEL);
        CaseBuilder other = base().set("/visits/0/left/standOff", 1.9)
                .set("/visits/0/right/standOff", 1.2)
                .set("/bench/left/bendRadius", 0.8)
                .set("/bench/right/length", 3.2)
                .set("/arch/molarWidth", 44.4);
        Forces exact = at(other);
        Forces quick = near.at(other.build(), 0, Workbook.none());
        assertThat(quick.low().value()).isCloseTo(exact.low().value(), Percentage.withPercentage(4));
        assertThat(quick.high().value()).isCloseTo(exact.high().value(), Percentage.withPercentage(4));
        assertThat(quick.peakStress().value()).isCloseTo(exact.peakStress().value(), Percentage.withPercentage(8));
        Forces same = near.at(c, 0, Workbook.none());
        assertThat(same.low().value()).isCloseTo(at(base()).low().value(), within(1e-9));
        assertThat(same.intrusivePerIncisor().value())
                .isCloseTo(at(base()).intrusivePerIncisor().value(), within(1e-9));
    }

    @Test
    void aPassiveWireStaysPassive() {
        CaseBuilder b = base().set("/visits/0/left/standOff", 0).set("/visits/0/right/standOff", 0);
        Forces f = new NearForces(b.build(), MODEL).at(b.build(), 0, Workbook.none());
        assertThat(f.high().value()).isZero();
        assertThat(at(b).high().sd()).isZero();
    }
}
