package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
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

    private static Forces exact(double low, double high, double down) {
        return new Forces(
                Measured.exact(low, Unit.GF),
                Measured.exact(high, Unit.GF),
                Measured.exact(600, Unit.MPA),
                Measured.exact(down, Unit.GF));
    }

    private static ForceLaw law(CaseBuilder b) {
        Case c = b.build();
        return ForceLaw.of(c, 0, PatientArch.of(c));
    }

    private static CaseBuilder high() {
        return base().set("/hardware/left/aboveBrackets", 4).set("/hardware/right/aboveBrackets", 4);
    }

    /**
     * 300 gf at a mean stand-off of 1.5 mm are 50 gf per mm for each incisor, of which 4.8 % count for each mm that
     * both tubes lie higher, and twice 2.35 % for each mm of stand-off.
     */
    @Test
    void theVerticalForceFollowsHeightsAndStandOffs() {
        CaseBuilder b = high();
        Case c = b.build();
        Measured down = law(b).withErrors(exact(200, 300, 20)).intrusivePerIncisor();
        double tube = c.hardware().left().aboveBrackets().sd();
        double standOff = c.visits().get(0).left().standOff().sd();
        assertThat(down.value()).isEqualTo(20);
        for (String side : List.of("left", "right")) {
            assertThat(down.part("/hardware/" + side + "/aboveBrackets"))
                    .isCloseTo(0.048 * 50 / 2 * tube, within(1e-9));
            assertThat(down.part("/visits/0/" + side + "/standOff")).isCloseTo(0.0235 * 50 * standOff, within(1e-9));
        }
        assertThat(tube * standOff).isPositive();
        Forces f = exact(200, 300, 20);
        CaseBuilder higher = high().set("/hardware/left/aboveBrackets", 5);
        assertThat(law(b).near(f, law(higher)).intrusivePerIncisor().value()).isCloseTo(20 + 1.2, within(1e-9));
        CaseBuilder wider = high().set("/visits/0/right/standOff", 1.8);
        assertThat(law(b).near(f, law(wider)).intrusivePerIncisor().value()).isCloseTo(20 + 0.4 * 1.175, within(1e-9));
    }

    /** The same against the whole model: tubes a millimetre higher, and opened half a millimetre more. */
    @Test
    void theVerticalForceFollowsTheModel() {
        double now = at(high()).intrusivePerIncisor().value();
        CaseBuilder higher = high().set("/hardware/left/aboveBrackets", 5).set("/hardware/right/aboveBrackets", 5);
        double byModel = at(higher).intrusivePerIncisor().value() - now;
        double byLaw =
                law(high()).near(at(high()), law(higher)).intrusivePerIncisor().value() - now;
        assertThat(byLaw).isCloseTo(byModel, Percentage.withPercentage(30));
    }

    @Test
    void whereNothingIsOpenedOrKnownNoErrorIsMadeUp() {
        CaseBuilder passive = high().set("/visits/0/left/standOff", 0).set("/visits/0/right/standOff", 0);
        Forces f = law(passive).withErrors(exact(0, 0, 3));
        assertThat(f.intrusivePerIncisor().sd()).isZero();
        assertThat(f.low().sd()).isZero();
        assertThat(law(passive)
                        .near(exact(0, 0, 3), law(high()))
                        .intrusivePerIncisor()
                        .value())
                .isEqualTo(3);
        Measured none = Measured.unknown("/wire/size");
        Forces withoutHigh = new Forces(none, none, none, Measured.exact(3, Unit.GF));
        assertThat(law(high()).withErrors(withoutHigh).intrusivePerIncisor().sd())
                .isZero();
        assertThat(law(high())
                        .near(withoutHigh, law(base()))
                        .intrusivePerIncisor()
                        .value())
                .isEqualTo(3);
        Forces withoutDown = new Forces(Measured.exact(1, Unit.GF), Measured.exact(2, Unit.GF), none, none);
        assertThat(law(high()).withErrors(withoutDown).intrusivePerIncisor()).isEqualTo(none);
        assertThat(law(high()).near(withoutDown, law(base())).intrusivePerIncisor())
                .isEqualTo(none);
    }
}
