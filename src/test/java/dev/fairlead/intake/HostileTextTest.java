package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.CaseWriter;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers beyond reason and characters that cannot be seen: refused where they stand, told in plain words. */
class HostileTextTest {
    private static CaseReading read(String text, CaseFormat format) {
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "case", format);
    }

    private static String with(String overjet) {
        return "{\"fairlead\": 1, \"id\": \"t-1\", \"stage\": \"indication\", \"bite\": {\"overjet\": " + overjet
                + "}}";
    }

    private static String told(CaseReading reading) {
        return reading.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1e-99999999999",
                "1e99999999999",
                "-1E+2147483648",
                "1e-400",
                "0.00000000000000001e-400",
                "{\"value\": 1e-99999999999, \"unit\": \"mm\"}",
                "{\"value\": 1e99999999999, \"unit\": \"in\"}",
                "{\"value\": 5, \"error\": 1e-99999999999, \"unit\": \"mm\"}",
                "[5, 1e-99999999999]",
                "\"1e-99999999999\""
            })
    void exponentsBeyondReasonAreRefusedAtTheirField(String overjet) throws UnreadableTextException {
        for (CaseFormat format : new CaseFormat[] {CaseFormat.JSON, CaseFormat.YAML}) {
            CaseReading reading = read(with(overjet), format);
            assertThat(reading.read()).as(overjet).isFalse();
            assertThat(reading.errors()).extracting(Problem::pointer).allMatch(p -> p.startsWith("/bite/overjet"));
            // the form shows such a file and reads it back
            CaseTree tree = CaseTree.parse(with(overjet), format);
            assertThat(tree.get("/bite/overjet").orElseThrow()).hasSizeLessThan(120);
            assertThat(tree.read("tree").read()).isFalse();
        }
    }

    @Test
    void exponentsWithinReasonAreNumbers() {
        CaseReading reading = read(with("35e-1"), CaseFormat.JSON);
        assertThat(reading.value().orElseThrow().bite().overjet().value()).isEqualTo(3.5);
        assertThat(CaseWriter.json(reading.value().get())).contains("3.5");
    }

    /** ESC, BEL, right-to-left override, isolate, zero-width no-break space, private use, a code point that is none. */
    @ParameterizedTest
    @ValueSource(
            ints = {0x1B, 0x07, 0x7F, 0x9B, 0x202E, 0x2066, 0x200F, 0xFEFF, 0x2028, 0xE000, 0xFFFE, 0xFDD0, 0xE0041})
    void charactersThatCannotBeSeenAreRefusedWithTheirName(int point) {
        String text =
                "{\"fairlead\": 1, \"id\": \"t-1\", \"stage\": \"indication\", \"waivers\": [{\"criterion\": \"overjet-after\","
                        + " \"reason\": \"seen " + String.format("\\u%04x", Character.toChars(point)[0] & 0xFFFF)
                        + (Character.charCount(point) == 2
                                ? String.format("\\u%04x", (int) Character.toChars(point)[1])
                                : "")
                        + " here\"}]}";
        CaseReading reading = read(text, CaseFormat.JSON);
        assertThat(reading.read()).isFalse();
        assertThat(told(reading)).contains("/waivers/0/reason", String.format("U+%04X", point));
        assertThat(Visible.odd(told(reading))).isEmpty();
    }

    @Test
    void whatIsQuotedFromAFileIsMadeVisible() {
        CaseReading reading =
                read("{\"fairlead\": 1, \"id\": \"t-1\", \"stage\": \"\\u001b[31mred\\u202e\"}", CaseFormat.JSON);
        assertThat(told(reading)).contains("<U+001B>[31mred<U+202E>");
        assertThat(Visible.odd(told(reading))).isEmpty();
    }

    @Test
    void lettersOfAnyScriptAndLineBreaksAreText() {
        assertThat(Visible.odd("Grüße, 歯列, دندان‌ها\n\tµ ± ° ≤ – “quoted” 😀")).isEmpty();
    }
}
