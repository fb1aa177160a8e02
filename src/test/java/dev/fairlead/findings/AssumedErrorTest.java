package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which error is taken where a case states none, and how that is told. */
class AssumedErrorTest {
    @ParameterizedTest
    @CsvSource({
        "/teeth/42/width, 0.1, MM, 0.1 mm: caliper repeat error of one tooth",
        "/contacts/42-41, 0.15, MM, 0.15 mm: displacement of one contact point",
        "/space/left, 0.25, MM, 0.25 mm: divider reading",
        "/mouth/plaqueScore, 5, PERCENT, 5%: ",
        "/visits/3/gauge, 10, GF, 10 gf: reading of a spring force gauge",
        "/visits/3/left/space, 0.25, MM, 0.25 mm: divider reading"
    })
    void aMeasurementHasTheErrorOfItsKind(String pointer, double sd, Unit unit, String says) {
        AssumedError assumed = AssumedError.of(pointer).orElseThrow(() -> new AssertionError(pointer));
        assertThat(assumed.sd()).isEqualTo(sd);
        assertThat(assumed.unit()).isEqualTo(unit);
        assertThat(assumed.says()).startsWith(says);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/child/sex", "/teeth/42", "/visits/0", "/nowhere/width", "/teeth/42/nothing", "/bite", ""})
    void whatIsNoMeasurementHasNone(String pointer) {
        assertThat(AssumedError.of(pointer)).isEmpty();
    }

    @Test
    void eachErrorIsToldOnce() {
        assertThat(AssumedError.all(List.of("/teeth/42/width", "/teeth/41/width", "/child/sex", "/space/left")))
                .hasSize(2);
        assertThat(AssumedError.sentence(List.of("/teeth/42/width", "/space/left")))
                .startsWith(AssumedError.INTRODUCTION + " 0.1 mm: caliper")
                .contains("; as 0.25 mm: divider")
                .endsWith(".");
        assertThat(AssumedError.sentence(List.of("/child/sex"))).isEmpty();
    }
}
