package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.Mouth;
import dev.fairlead.facts.RecordsKept;
import dev.fairlead.facts.Wire;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Clinic;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Materials, misfit, the ratio of the anterior teeth, and whose figures are taken. */
class OtherFactsTest {
    /** Beta-titanium holds no nickel, nickel-free steel next to none (0.05 % in ASTM F2229, from memory). */
    @ParameterizedTest
    @CsvSource({
        "stainless-steel, yes, yes",
        "nickel-titanium, yes, no",
        "cobalt-chromium, yes, no",
        "beta-titanium, no, no",
        "nickel-free-steel, no, yes"
    })
    void whatAWireIsMadeOf(String material, String nickel, String steel) {
        CaseBuilder b = new CaseBuilder().set("/wire/material", material).set("/mouth/nickelSensitivity", true);
        assertThat(Made.first(b, Mouth.class).nickelExposed()).hasToString(nickel);
        assertThat(Made.first(b, Wire.class).steel()).hasToString(steel);
        b.without("/wire/material");
        assertThat(Made.first(b, Mouth.class).nickelExposed().missing()).containsExactly("/wire/material");
        assertThat(Made.first(b, Wire.class).steel().missing()).containsExactly("/wire/material");
    }

    /** Both measured or both computed: half of each would be the misfit of no wire. */
    @Test
    void aMisfitIsMeasuredOrComputed() {
        CaseBuilder b = SampleCase.full();
        assertThat(Made.first(b, Wire.class).misfitRms().value()).isEqualTo(0.5);
        assertThat(Made.first(b, Wire.class).misfitWorst().value()).isEqualTo(1.1);
        Wire rms = Made.first(b.copy().without("/bench/misfitWorst"), Wire.class);
        assertThat(rms.misfitRms().value()).isEqualTo(0.5);
        assertThat(rms.misfitWorst().missing()).containsExactly("/bench/misfitWorst");
        Wire worst = Made.first(b.copy().without("/bench/misfitRms"), Wire.class);
        assertThat(worst.misfitRms().missing()).containsExactly("/bench/misfitRms");
        assertThat(worst.misfitWorst().value()).isEqualTo(1.1);
        Wire computed = Made.first(b.without("/bench/misfitRms").without("/bench/misfitWorst"), Wire.class);
        assertThat(computed.misfitRms().known()).isTrue();
        assertThat(computed.misfitWorst().value())
                .isGreaterThan(computed.misfitRms().value());
    }

    /**
     * Six lower over six upper anterior teeth (Bolton 1958): 37 mm of 45 mm are 82.2 %. There is none while a canine is
     * to come, nor where one is missing.
     */
    @Test
    void theAnteriorRatioWaitsForCaninesThatAreToCome() {
        CaseBuilder b = new CaseBuilder().incisors(6, 5.5, 5.5, 6);
        int[] teeth = {43, 33, 13, 12, 11, 21, 22, 23};
        double[] widths = {7, 7, 7.5, 6.5, 8.5, 8.5, 6.5, 7.5};
        for (int i = 0; i < teeth.length; i++) {
            b.set("/teeth/" + teeth[i] + "/width", widths[i]);
        }
        assertThat(ratio(b).anteriorRatio().value()).isCloseTo(100 * 37.0 / 45, within(1e-9));
        b.set("/teeth/33/state", "unerupted");
        assertThat(ratio(b).anteriorRatio().value())
                .as("its width was read on a film")
                .isCloseTo(100 * 37.0 / 45, within(1e-9));
        b.without("/teeth/12/width");
        assertThat(ratio(b).anteriorRatio().missing())
                .as("no canine is waited for")
                .containsExactly("/teeth/12/width");
        for (int canine : new int[] {33, 43, 13, 23}) {
            for (String state : new String[] {"unerupted", "primary-present", "erupted", "missing"}) {
                CaseBuilder waits =
                        b.copy().without("/teeth/" + canine + "/width").set("/teeth/" + canine + "/state", state);
                assertThat(ratio(waits).anteriorRatio().applies())
                        .as(canine + " " + state)
                        .isEqualTo(state.equals("erupted"));
            }
        }
    }

    private static RecordsKept ratio(CaseBuilder b) {
        return Made.first(b, RecordsKept.class);
    }

    @Test
    void aClinicsOwnFiguresTakeThePlaceOfThePublishedOnes() {
        Clinic p = Clinic.PUBLISHED;
        Calculations plain = Calculations.plain();
        assertThat(plain.of(new Clinic(p.tipping(), p.rate(), p.gain(), 0))).isSameAs(plain);
        Clinic own = new Clinic(new Clinic.Spread(1.2, 0.1), p.rate(), p.gain(), 20);
        Calculations of = plain.asking(Set.of(Wire.class)).of(own);
        assertThat(of.clinic()).isEqualTo(own);
        assertThat(of.force()).isSameAs(plain.force());
        assertThat(of.asked()).contains(Set.of(Wire.class));
    }
}
