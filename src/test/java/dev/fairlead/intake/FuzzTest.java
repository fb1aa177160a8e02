package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.landmarks.LandmarkCsv;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.CaseWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Damaged files of every sort: reading never throws, and gives either a whole case that can be written and read again,
 * or errors.
 */
class FuzzTest {
    private static final List<String> BITS = List.of(
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"",
            "'",
            "-",
            "\n",
            "\t",
            "&a",
            "*a",
            "!!",
            "#",
            "null",
            "NaN",
            "1e999",
            "0x",
            "unknown",
            "does-not-apply",
            "\u0000",
            "é",
            "\uD83D\uDE00",
            "|",
            ">",
            "%",
            "@",
            "`",
            "---",
            "...",
            "? ",
            "<<: ",
            "true",
            "5",
            ".",
            "_",
            "\\",
            "\\u12",
            "\uFEFF",
            "\u2028",
            "999999999999999999999");

    @ParameterizedTest
    @CsvSource({"JSON,1", "JSON,2", "YAML,3", "YAML,4"})
    void damagedTextIsReadWholeOrRefused(CaseFormat format, long seed) throws UnreadableTextException {
        Random random = new Random(seed);
        RandomCases cases = new RandomCases(seed, 0.4);
        // a quarter of all for each row, 21 of each good case
        for (int i = 0; i < Integer.getInteger("fairlead.fuzz", 2000) / 4 / 21; i++) {
            String good = CaseTree.of(cases.next()).text(format);
            for (int k = 0; k < 16; k++) {
                check(damaged(good, random).getBytes(StandardCharsets.UTF_8), format);
            }
            byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
            for (int k = 0; k < 5; k++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                check(bytes, format);
            }
        }
    }

    private static String damaged(String text, Random random) {
        StringBuilder s = new StringBuilder(text);
        int cuts = 1 + random.nextInt(4);
        for (int i = 0; i < cuts && s.length() > 2; i++) {
            int at = random.nextInt(s.length());
            switch (random.nextInt(5)) {
                case 0 -> s.deleteCharAt(at);
                case 1 -> s.insert(at, BITS.get(random.nextInt(BITS.size())));
                case 2 ->
                    s.replace(
                            at,
                            Math.min(s.length(), at + 1 + random.nextInt(8)),
                            BITS.get(random.nextInt(BITS.size())));
                case 3 -> s.insert(at, s.substring(at, Math.min(s.length(), at + random.nextInt(200))));
                default -> s.setLength(Math.max(1, at));
            }
        }
        return s.toString();
    }

    private static void check(byte[] bytes, CaseFormat format) {
        CaseReading r = CaseReader.read(bytes, "x", format);
        assertThat(r.value().isPresent()).isEqualTo(r.errors().isEmpty());
        assertThat(r.problems()).allSatisfy(p -> assertThat(p.expected()).isNotBlank());
        r.value().ifPresent(c -> {
            CaseReading again =
                    CaseReader.read(CaseWriter.json(c).getBytes(StandardCharsets.UTF_8), "x", CaseFormat.JSON);
            assertThat(again.value()).contains(c);
        });
        assertThat(LandmarkCsv.read(bytes, "x").problems()).isNotEmpty();
    }
}
