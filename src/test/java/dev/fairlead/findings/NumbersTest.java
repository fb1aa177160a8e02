package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Threshold;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How numbers read: rounding half up as ISO 80000-1:2009, B.2 (rule B) has it for positive numbers, the same in every
 * locale.
 */
class NumbersTest {
    private static Threshold threshold(Unit unit, double value, double step) {
        return new Threshold("c.t", "a limit", unit, value, -1e6, 1e6, step, true, Threshold.Bound.UPPER, List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "2.45, MM, 2.5 mm",
        "-0.04, MM, 0.0 mm",
        "1e-12, MM, 0.0 mm",
        "1234567.0, GF, 1234567 gf",
        "95, DEGREE, 95.0°",
        "30.4, PERCENT, 30 %",
        "1.005, RATIO, 1.01",
        "4, COUNT, 4",
        "3.5, COUNT, 3.50",
        "900, MPA, 900 MPa",
        "5.25, WEEK, 5.3 weeks"
    })
    void aValueIsWrittenWithTheDecimalsOfItsUnit(double value, Unit unit, String text) {
        assertThat(Numbers.text(value, unit)).isEqualTo(text);
    }

    /** Ties of three decimals are among them, which doubles hold a little above or below. */
    @Test
    void roundingIsThatOfTheDecimalsThatANumberReadsAs() {
        Random random = new Random(11);
        for (int i = 0; i < 20_000; i++) {
            double value = i % 2 == 0
                    ? (random.nextInt(400_000) - 200_000) / 1000.0
                    : (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12));
            int decimals = random.nextInt(7);
            BigDecimal exact = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
            assertThat(Numbers.plain(value, decimals))
                    .isEqualTo((exact.signum() == 0 ? exact.abs() : exact).toPlainString());
        }
    }

    @Test
    void theStandardErrorStandsBesideTheValue() {
        assertThat(Numbers.text(Measured.of(2.1, Unit.MM, "/a", 0.3))).isEqualTo("2.1 ± 0.3 mm");
        assertThat(Numbers.text(Measured.of(92, Unit.DEGREE, "/a", 2))).isEqualTo("(92.0 ± 2.0)°");
        assertThat(Numbers.text(Measured.unknown("/a"))).isEqualTo("unknown");
        assertThat(Numbers.text(Measured.notApplicable())).isEqualTo("does not apply");
    }

    @Test
    void aValueBesideItsLimitNeverLooksEqualToItUnlessItIs() {
        Threshold one = threshold(Unit.MM, 1.0, 0.1);
        assertThat(Numbers.beside(Measured.exact(0.96, Unit.MM), one)).isEqualTo("0.96 mm");
        assertThat(Numbers.beside(Measured.exact(1.0, Unit.MM), one)).isEqualTo("1.0 mm");
        assertThat(Numbers.beside(Measured.exact(1.0004, Unit.MM), one)).isEqualTo("1.0004 mm");
        assertThat(Numbers.beside(Measured.exact(1.0000002, Unit.MM), one)).isEqualTo("1.000000 mm");
        assertThat(Numbers.text(threshold(Unit.PERCENT, 77.2, 0.1))).isEqualTo("77.2 %");
    }

    @Test
    void aPlayThatIsAHairShortOfItsLimitShowsItInInchesAndInItsMarginToo() {
        Threshold play = threshold(Unit.MM, 0.0254, 0.001);
        assertThat(Numbers.beside(Measured.exact(0.02535, Unit.MM), play)).isEqualTo("0.02535 mm (0.000998 in)");
        assertThat(Numbers.beside(Measured.exact(0.0254, Unit.MM), play)).isEqualTo("0.025 mm (0.001 in)");
        // told with the opposite sign it still may not look like the limit
        assertThat(Numbers.oppositeBeside(Measured.exact(-0.54, Unit.MM), threshold(Unit.MM, -0.5, 0.1)))
                .isEqualTo("0.54 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 %",
        "0.0001, under 1 %",
        "0.0099, under 1 %",
        "0.01, 1 %",
        "0.014, 1 %",
        "0.5, 50 %",
        "0.986, 99 %",
        "0.99, 99 %",
        "0.9901, over 99 %",
        "0.99999, over 99 %",
        "1, 100 %"
    })
    void aChanceIsNeverRoundedToNeverOrAlways(double chance, String text) {
        assertThat(Numbers.chance(chance)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.2, 0.8 mm",
        "1, 0.0 mm",
        "0.96, 0.04 mm",
        "1.004, 0.004 mm",
        "1.0000004, 0.000000 mm",
        "12.3, 11.3 mm"
    })
    void aMarginIsNotRoundedToNone(double value, String margin) {
        SeenValue seen = new SeenValue(Measured.exact(value, Unit.MM), threshold(Unit.MM, 1.0, 0.1));
        assertThat(seen.marginText()).isEqualTo(margin);
        assertThat(seen.limitText()).isEqualTo("1.0 mm");
    }

    /** 1 in = 25.4 mm exactly (international yard and pound agreement of 1959). */
    @Test
    void sizesOfWireAreWrittenInInchesToo() {
        assertThat(Numbers.text(threshold(Unit.MM, 0.0254, 0.001))).isEqualTo("0.025 mm (0.001 in)");
        assertThat(Numbers.beside(Measured.exact(0.508, Unit.MM), threshold(Unit.MM, 0.0254, 0.001)))
                .isEqualTo("0.508 mm (0.020 in)");
        assertThat(Numbers.text(threshold(Unit.MM, 0.5, 0.01)))
                .as("a coarser step is none of wire")
                .isEqualTo("0.50 mm");
    }

    @Test
    void theLocaleOfTheMachineDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Numbers.text(1234.5, Unit.MM)).isEqualTo("1234.5 mm");
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(Numbers.text(1234.5, Unit.MM)).isEqualTo("1234.5 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void whatIsNoNumberIsNotShown() {
        assertThatThrownBy(() -> Numbers.plain(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Numbers.plain(Double.POSITIVE_INFINITY, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
