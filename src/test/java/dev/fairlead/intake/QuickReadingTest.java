package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonParser;
import dev.fairlead.intake.bind.Decimals;
import dev.fairlead.intake.spelling.DateSlips;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.CaseParsers;
import dev.fairlead.model.Case;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick ways of reading read what the Java library reads. */
class QuickReadingTest {
    private static double read(String number) throws IOException {
        try (JsonParser p = CaseParsers.open(number.getBytes(StandardCharsets.UTF_8))) {
            p.nextToken();
            return Decimals.read(p);
        }
    }

    /** {@link Double#parseDouble} is rounded correctly (IEEE 754, by its specification). */
    @Test
    void decimalsAreTheNearestDoubles() throws IOException {
        Random random = new Random(1990);
        for (int i = 0; i < 50_000; i++) {
            int digits = 1 + random.nextInt(19);
            BigDecimal value = new BigDecimal(
                    new java.math.BigInteger(60, random).mod(java.math.BigInteger.TEN.pow(digits)), random.nextInt(18));
            String text =
                    (random.nextBoolean() ? "-" : "") + value.toPlainString() + (random.nextInt(9) == 0 ? "e-3" : "");
            double quick = read(text + " ");
            if (Double.isNaN(quick)) {
                // left to the exact way
                assertThat(text.contains("e") || text.replaceAll("[^0-9]", "").length() > 15)
                        .as(text)
                        .isTrue();
                continue;
            }
            assertThat(Double.doubleToLongBits(quick + 0.0))
                    .as(text)
                    .isEqualTo(Double.doubleToLongBits(Double.parseDouble(text) + 0.0));
        }
        for (String text : new String[] {
            "0", "5", "0.0", "5.4", "0.1", "12345678901234.5", "999999999999999", "0.00000000000001", "-7"
        }) {
            assertThat(read(text + " ")).as(text).isEqualTo(Double.parseDouble(text));
        }
    }

    @Test
    void datesAreThoseOfTheCalendar() {
        for (LocalDate day = LocalDate.of(1999, 12, 1); day.getYear() < 2101; day = day.plusDays(1)) {
            assertThat(DateSlips.read(day.toString())).isEqualTo(day);
        }
        for (String none : new String[] {
            "2026-02-29",
            "2026-13-01",
            "2026-00-10",
            "2026-01-00",
            "2026-1-001",
            "+026-01-01",
            "2026-01-0a",
            "2026/01/01",
            "20260-1-01"
        }) {
            assertThatThrownBy(() -> DateSlips.read(none)).as(none).isInstanceOf(DateTimeException.class);
        }
    }

    /** Fields in another order than that of the format are looked up by name. */
    @Test
    void theOrderOfFieldsDoesNotMatter() {
        String some =
                "\"plan\":{\"standOff\":1.5,\"advanceLeft\":2},\"child\":{\"sex\":\"male\",\"age\":[9.1,9.2]},\"stage\":\"indication\",\"id\":\"c1\",\"fairlead\":1";
        String usual =
                "\"fairlead\":1,\"id\":\"c1\",\"stage\":\"indication\",\"child\":{\"age\":[9.1,9.2],\"sex\":\"male\"},\"plan\":{\"advanceLeft\":2,\"standOff\":1.5}";
        assertThat(read(some, true)).isEqualTo(read(usual, true));
        assertThat(read(some, false)).isEqualTo(read(usual, false)).isNotEqualTo(read(some, true));
        assertThat(read(some, false).child().age().sd()).isZero();
        assertThat(read(some, false).child().age().repeats()).containsExactly(9.1, 9.2);
    }

    private static Case read(String fields, boolean errors) {
        byte[] json = ("{" + fields + ",\"teeth\":{\"31\":{\"width\":5.4}}}").getBytes(StandardCharsets.UTF_8);
        return (errors
                        ? CaseReader.read(json, "c.json", CaseFormat.JSON)
                        : CaseReader.readExact(json, "c.json", CaseFormat.JSON))
                .value()
                .orElseThrow();
    }
}
