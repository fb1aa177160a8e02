package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.cli.CasesTest.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Wire and sheet from the command line; expected texts are rewritten with {@code -Dfairlead.accept=true}, as those of
 * the reports are.
 */
class WireCommandTest {
    private static final Path EXPECTED = Path.of("src/test/resources/expected-wire");
    private static final String CLEAN = "cases/heron-07-clean.yaml";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "heron-07-clean --sizes 0.016,0.018,0.020",
                "knot-08-half-missing",
                "stilt-10-gauge-overrides --visit 1"
            })
    void tellsTheSameStory(String call) throws IOException {
        String[] words = call.split(" ");
        Run run = CasesTest.run(Stream.concat(
                        Stream.of("wire", "cases/" + words[0] + ".yaml"),
                        Arrays.stream(words).skip(1))
                .toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        Path expected = EXPECTED.resolve(words[0] + ".txt");
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.writeString(expected, run.out());
        }
        assertThat(run.out()).isEqualTo(Files.readString(expected));
        assertThat(run.out()
                        .lines()
                        .filter(l -> l.codePointCount(0, l.length()) > 80 && !l.contains("/"))
                        .toList())
                .as("lines over 80 columns")
                .isEmpty();
        assertThat(run.out().toLowerCase(java.util.Locale.ROOT))
                .doesNotContainPattern("\\bsafe\\b")
                .doesNotContain("NaN", "[0]");
    }

    @Test
    void jsonCarriesTheSameNumbers() throws IOException {
        JsonNode tree = JsonMapper.builder()
                .build()
                .readTree(CasesTest.run("wire", CLEAN, "--format", "json", "--sizes", "0.018")
                        .out());
        JsonNode first = tree.at("/tables/marks/lines/firstBend/values/0");
        assertThat(first.get("unit").asText()).isEqualTo("mm");
        assertThat(first.get("text").asText()).matches("40\\.\\d ± 0\\.\\d mm");
        JsonNode band = tree.at("/tables/force/lines/band/values/1");
        assertThat(band.get("to").asDouble()).isGreaterThan(band.get("value").asDouble());
        assertThat(band.get("value").asDouble()).isGreaterThan(0.5);
        assertThat(tree.at("/tables/sizes/lines/d0.457/values/0/to").asDouble())
                .isLessThan(tree.at("/tables/force/lines/band/values/0/to").asDouble());
        assertThat(tree.at("/sources/0/citation").asText()).isNotBlank();
    }

    /**
     * Force goes with d^4 where the folds stay as they are; on one beak a thinner wire makes a tighter, stiffer fold,
     * so it falls a little less.
     */
    @Test
    void sizesAreReadInInchesAndMillimetres() throws IOException {
        String inches = CasesTest.run("wire", CLEAN, "--sizes", "0.018").out();
        assertThat(CasesTest.run("wire", CLEAN, "--sizes", "0.018 in").out()).isEqualTo(inches);
        List<String> twice = CasesTest.run("wire", CLEAN, "--sizes", "0,4572 mm; 0,018 in")
                .out()
                .lines()
                .filter(line -> line.startsWith("  0.018 in "))
                .toList();
        assertThat(twice).hasSize(2).containsOnly(twice.get(0));
        assertThat(CasesTest.run("wire", CLEAN, "--sizes", "18").code()).isEqualTo(2);
        assertThat(CasesTest.run("wire", CLEAN, "--sizes", "0.018;x").err()).contains("--sizes");
        assertThat(CasesTest.run("wire", CLEAN, "--visit", "9").err()).contains("no visit 9");
    }

    @Test
    void writesPictures(@TempDir Path folder) throws IOException {
        assertThat(CasesTest.run("wire", CLEAN, "--pictures", folder.toString()).code())
                .isZero();
        try (Stream<Path> made = Files.list(folder)) {
            assertThat(made.map(p -> p.getFileName().toString()).sorted().toList())
                    .containsExactly("folds.svg", "load.svg", "stand-off.svg", "wire.svg");
        }
        assertThat(CasesTest.run(
                                "wire",
                                CLEAN,
                                "--pictures",
                                folder.resolve("none").toString())
                        .code())
                .isEqualTo(2);
    }

    @Test
    void writesASheetWholeOrNotAtAll(@TempDir Path folder) throws IOException {
        Path pdf = folder.resolve("a.pdf");
        assertThat(CasesTest.run("sheet", CLEAN, "-o", pdf.toString()).code()).isZero();
        byte[] first = Files.readAllBytes(pdf);
        assertThat(new String(first, 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        assertThat(CasesTest.run("sheet", CLEAN, "--force", "-o", pdf.toString(), "--paper", "Letter")
                        .code())
                .isZero();
        assertThat(Files.readAllBytes(pdf)).isNotEqualTo(first);
        Run absent =
                CasesTest.run("sheet", CLEAN, "-o", folder.resolve("none/a.pdf").toString());
        assertThat(absent.code()).isEqualTo(2);
        assertThat(absent.err()).contains("the folder none is not there");
        assertThat(CasesTest.run("sheet", CLEAN, "-o", folder.resolve("a.docx").toString())
                        .err())
                .contains(".pdf or an .svg");
        assertThat(CasesTest.run("sheet", CLEAN, "-o", folder.resolve("a.svg").toString())
                        .code())
                .isZero();
        assertThat(Files.readString(folder.resolve("a.svg"))).startsWith("<svg");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(p -> p.getFileName().toString()).sorted().toList())
                    .containsExactly("a.pdf", "a.svg");
        }
    }
}
