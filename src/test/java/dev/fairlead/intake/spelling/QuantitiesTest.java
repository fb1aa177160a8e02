package dev.fairlead.intake.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.spelling.Quantities.Typed;
import dev.fairlead.model.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesTest {
    /**
     * One inch is 25.4 mm (international yard and pound agreement 1959); wire and slot sizes as ISO 15841 and makers
     * give them in both units.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "0.020 in|0.508",
                "0.020in|0.508",
                ".020\"|0.508",
                "0.020″|0.508",
                "0,020 in|0.508",
                "20 mil|0.508",
                "0.016 inches|0.4064",
                "0.018 in|0.4572",
                "0.022 in|0.5588",
                "0,508 mm|0.508",
                "0.508|0.508",
                "0.0508 cm|0.508",
                "508 µm|0.508",
                "+1.5 mm|1.5",
                "-2 mm|-2",
                "\u22122 mm|-2",
                " 5.4 mm |5.4",
                "1.234 mm|1.234",
                "1,234 mm|1.234",
                "5|5"
            })
    void lengthsComeOutInMillimetres(String text, double mm) {
        Typed t = Quantities.read(text, Unit.MM, -500, 500);
        assertThat(t.complaint()).isEmpty();
        assertThat(t.value()).isEqualTo(mm);
    }

    /** 1 gf = 0.00980665 N exactly (standard gravity, CGPM 1901); a week has 7 days; a year 12 months. */
    @ParameterizedTest
    @CsvSource({
        "35 gf,GF,35",
        "35 g,GF,35",
        "0.00980665 N,GF,1",
        "0.980665 cN,GF,1",
        "3.4323275 N,GF,350",
        "24°,DEGREE,24",
        "24 deg,DEGREE,24",
        "20 %,PERCENT,20",
        "9.4 y,YEAR,9.4",
        "114 months,YEAR,9.5",
        "4 weeks,WEEK,4",
        "28 days,WEEK,4",
        "2 weeks,DAY,14",
        "200 GPa,MPA,200000",
        "1800 N/mm²,MPA,1800",
        "193000 MPa,GPA,193"
    })
    void otherUnitsConvert(String text, Unit unit, double expected) {
        Typed t = Quantities.read(text, unit, 0, 1e6);
        assertThat(t.complaint()).isEmpty();
        assertThat(t.unitStated()).isTrue();
        assertThat(t.value()).isCloseTo(expected, org.assertj.core.data.Offset.offset(1e-8));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.234,5",
                "1,234.5",
                "1,234,567",
                "1.234.567",
                "1 234",
                "1'234",
                "1_000",
                "0x1F",
                "012",
                "1:30",
                "9;5",
                "1/2",
                "1/2 in",
                "NaN",
                "Infinity",
                ".inf",
                "1e3",
                "1e400",
                "about 5",
                "~5",
                "<5",
                "5-6",
                "5 mm 3",
                "5 bananas",
                "5 kg",
                "mm",
                "--5",
                "5..2",
                "5.",
                "",
                "  ",
                "five",
                "5 m",
                "5 5",
                "5;",
                "0.5.0",
                "1,2,3",
                "٣"
            })
    void whateverHasTwoReadingsOrNoneIsRefused(String text) {
        Typed t = Quantities.read(text, Unit.MM, -500, 500);
        assertThat(t.ok()).isFalse();
        assertThat(t.complaint()).isNotBlank();
        assertThat(t.value()).isNaN();
    }

    @Test
    void aCommaIsDecimalInLengthsAndRefusedWhereThousandsFit() {
        assertThat(Quantities.read("1,234", Unit.MM, 0, 5000).value()).isEqualTo(1.234);
        Typed force = Quantities.read("1,200 gf", Unit.GF, 0, 3000);
        assertThat(force.ok()).isFalse();
        assertThat(force.mend()).contains("1200").contains("1.200");
        assertThat(Quantities.read("0,200 gf", Unit.GF, 0, 3000).value()).isEqualTo(0.2);
    }

    @Test
    void aUnitOfAnotherKindIsRefused() {
        Typed t = Quantities.read("24°", Unit.MM, 0, 50);
        assertThat(t.ok()).isFalse();
        assertThat(t.mend()).contains("mm");
    }
}
