package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A gauge read at one wire says of another what the ratio of two forces says, by hand arithmetic. */
class GaugeReadingTest {
    /** Its low end goes from 100 gf at 1 mm to 180 at 2 mm and 60 at 0.5 mm, its high end from 150 to 330 and 60. */
    private static final ForceModel MODEL = (c, visit, book) -> {
        double mm = c.visits().get(visit).left().standOff().value();
        return forces(gf(mm == 2 ? 180 : mm == 1 ? 100 : 60), gf(mm == 2 ? 330 : mm == 1 ? 150 : 60));
    };

    private static Forces forces(Measured low, Measured high) {
        return new Forces(low, high, Measured.notApplicable(), Measured.notApplicable());
    }

    private static Measured gf(double value) {
        return Measured.exact(value, Unit.GF);
    }

    private static CaseBuilder read(double standOff) {
        return BaseCase.of()
                .set("/visits/1/gauge", 120)
                .set("/visits/1/left/standOff", standOff)
                .set("/visits/1/right/standOff", standOff);
    }

    @Test
    void aReadingGrowsByTheMeanRatioOfBothEnds() {
        Case at1 = read(1).build();
        Measured m = GaugeReading.carried(at1, read(2).build(), 1, MODEL);
        // 180 / 100 and 330 / 150: 1.8 and 2.2, their mean 2
        assertThat(m.value()).isCloseTo(240, within(1e-9));
        // half of what the ends differ by, and a fifth of the change: 120 (0.2 + 0.2)
        assertThat(m.part("ratio of two forces by the beam model")).isCloseTo(48, within(1e-9));
        // the error of the gauge itself grows with the reading
        assertThat(m.part("/visits/1/gauge"))
                .isCloseTo(2 * at1.visits().get(1).gauge().sd(), within(1e-9))
                .isPositive();
    }

    @Test
    void aReadingShrinksByItToo() {
        Measured m = GaugeReading.carried(read(1).build(), read(0.5).build(), 1, MODEL);
        // 60 / 100 and 60 / 150: 0.6 and 0.4, their mean 0.5; an error has no sign: 120 (0.1 + 0.2 x 0.5)
        assertThat(m.value()).isCloseTo(60, within(1e-9));
        assertThat(m.part("ratio of two forces by the beam model")).isCloseTo(24, within(1e-9));
    }

    @Test
    void theSameWireKeepsItsReading() {
        Case c = read(1).build();
        Case otherMouth = read(1).set("/bite/overjet", 5).build();
        assertThat(GaugeReading.carried(c, otherMouth, 1, MODEL))
                .isEqualTo(c.visits().get(1).gauge());
    }

    @ParameterizedTest
    @CsvSource({"/wire/section, rectangular", "/wire/material, beta-titanium", "/wire/modulus, 170", "/wire/size, 0.457"
    })
    void ofAnotherWireTheReadingSaysNothingWithoutTheModel(String pointer, String value) {
        boolean number = Character.isDigit(value.charAt(0));
        Object other = number ? (Object) Double.valueOf(value) : value;
        Measured none = Measured.unknown("/wire/size");
        ForceModel mute = (c, visit, book) -> forces(none, none);
        Case before = read(1).build();
        assertThat(GaugeReading.carried(before, read(1).set(pointer, other).build(), 1, mute)
                        .missing())
                .containsExactly("/visits/1/gauge");
        assertThat(GaugeReading.carried(before, read(1).build(), 1, mute).value())
                .isEqualTo(120);
    }

    @Test
    void aReadingOfItsOwnStands() {
        Case own = read(2).set("/visits/1/gauge", 150).build();
        assertThat(GaugeReading.carried(read(1).build(), own, 1, MODEL).value()).isEqualTo(150);
        Case none = read(2).without("/visits/1/gauge").build();
        assertThat(GaugeReading.carried(none, read(1).build(), 1, MODEL).value())
                .isEqualTo(120);
        assertThat(GaugeReading.carried(none, none, 1, MODEL).missing()).containsExactly("/visits/1/gauge");
    }

    /** Whichever of the four forces the model has no answer for, and where nothing can be divided by. */
    @Test
    void withoutAnAnswerOfTheModelNothingIsCarried() {
        Measured none = Measured.unknown("/wire/size");
        Forces known = forces(gf(100), gf(150));
        for (Forces f : new Forces[] {forces(none, gf(150)), forces(gf(100), none)}) {
            assertThat(carried(f, known).missing()).containsExactly("/visits/1/gauge");
            assertThat(carried(known, f).missing()).containsExactly("/visits/1/gauge");
        }
        assertThat(carried(forces(gf(0), gf(150)), known).missing()).containsExactly("/visits/1/gauge");
        assertThat(carried(known, known).known()).isTrue();
    }

    private static Measured carried(Forces before, Forces after) {
        return GaugeReading.carried(
                read(1).build(),
                read(2).build(),
                1,
                (c, visit, book) -> c.visits().get(visit).left().standOff().value() == 1 ? before : after);
    }
}
