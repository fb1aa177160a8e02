package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write at the chair is answered with what to write, in words that are not those of a library. */
class HintsTest {
    private static final Pattern LIBRARY = Pattern.compile(
            "StreamRead|ALLOW_|JsonRead|Feature|code \\d+|<block|<stream|token|scalar|BigInteger|Exception|org\\.|com\\.|expected [A-Z][a-z]");

    private static final Pattern TWICE = Pattern.compile("found (.+); likely \\1;");

    private static String told(String text, CaseFormat format) {
        CaseReading reading = CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "case", format);
        return reading.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    private static String yaml(String lines) {
        return told("fairlead: 1\nid: a-1\nstage: holding\n" + lines.replace("|", "\n") + "\n", CaseFormat.YAML);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "wire:|  size: 020; write 0.020 in",
                "wire:|  size: 018; write 0.018 in",
                "headFilm:|  tippingRadius: 209; a lost decimal point (20.9 mm)",
                "space:|  perimeter: 650; a lost decimal point (65 mm)",
                "bite:|  overjet: 65; a lost decimal point (6.5 mm)",
                "wire:|  size: 0.02; inches in a field in mm (0.508 mm)",
                "wire:|  size: 0.508 in; a millimetre value marked as inches (0.508 mm)",
                "headFilm:|  IMPA: 95; write incisorMandibular",
                "headFilm:|  FMA: 25; write mandibularPlane",
                "child:|  sex: f; write female",
                "child:|  sex: M; write male",
                "wire:|  material: steel; write stainless-steel or nickel-free-steel",
                "child:|  sex: '?'; write unknown",
                "child:|  sex:; write unknown",
                "bite:|  overjet: '?'; write unknown",
                "bite:|  overjet: 0.5 left; in the field of that side",
                "films:|  panoramicRead: N; write no",
                "films:|  panoramicRead: 'Yes'; write yes",
                "films:|  panoramicRead: maybe; write one of these words",
                "child:|  age: 9.4|    sex: male; an indent that is off"
            })
    void isAnsweredWithWhatToWrite(String lines, String answer) {
        assertThat(yaml(lines)).contains(answer).doesNotContainPattern(LIBRARY);
    }

    @Test
    void aDescriptionStandsWithinItsSentence() {
        assertThat(told("fairlead: 1\nid: A B\nstage: holding\n", CaseFormat.YAML))
                .contains("/id: expected a ")
                .doesNotContainPattern(LIBRARY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"fairlead\": 1,, }",
                "{\"fairlead\": 1 \"id\": 2}",
                "{fairlead: 1}",
                "{\"fairlead\": tru}",
                "{\"fairlead\": 01}",
                "{\"fairlead\": 1",
                "{\"a\": \"\\q\"}",
                "{\"a\": \"\u0001\"}",
                "{\"a\": 1.}",
                "{\"a\": +}",
                "// note\n{}",
                "{\"a\" 1}",
                "{\"a\": .5}",
                "{'a': 1}",
                "{\"a\": \"x\ny\"}",
                "]",
                "{\"a\": 11111111111111111111111111111111111111111111111111}"
            })
    void brokenJsonIsToldInPlainWords(String text) {
        assertThat(told(text, CaseFormat.JSON))
                .isNotEmpty()
                .doesNotContainPattern(LIBRARY)
                .doesNotContainPattern(TWICE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: b: c",
                "a: [1, 2",
                "a: {b: 1",
                "a: \"open",
                "%x",
                "a: @b",
                "a: `b",
                "\ta: 1",
                "a: &",
                "a: *",
                "a: !!binary x",
                "a\nb: 1",
                "- a\nb: 1",
                "a: 1\n b: 2",
                "a:\n   b: 1\n  c: 2",
                "a: |x\n b",
                "? [a]\n: b",
                "a: \u0007",
                "--- a\n--- b"
            })
    void brokenYamlIsToldInPlainWords(String text) {
        assertThat(told(text, CaseFormat.YAML))
                .isNotEmpty()
                .doesNotContainPattern(LIBRARY)
                .doesNotContainPattern(TWICE);
    }

    @Test
    void depthAndSizeAreToldWhereTheyAre() {
        String deep = "{\"fairlead\": 1,\n\"id\": \"a-1\",\n\"stage\": " + "[".repeat(60);
        assertThat(told(deep, CaseFormat.JSON))
                .startsWith("3:")
                .contains("deeper than any case")
                .doesNotContainPattern(LIBRARY);
        String yaml = "fairlead: 1\nid: a-1\nstage: " + "[".repeat(60);
        assertThat(told(yaml, CaseFormat.YAML)).startsWith("3:").contains("deeper than any case");
        String wide = "{\"fairlead\": 1,\n\"id\": \"" + "x".repeat(20_000) + "\"}";
        assertThat(told(wide, CaseFormat.JSON)).startsWith("2:").contains("more than 10 000 characters");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "date: 2026-03-01|films:|  models: 2006-03-01; /films/models",
                "waivers:|  - {criterion: overjet-after, date: 2026-03-01, expires: 2099-03-01}; /waivers/0/expires",
                "bite:|  overjet: {value: 3, error: 29}; /bite/overjet/error",
                "images:|  - {tooth: 33, reference: 33}; /images/0/reference",
                "date: 2026-03-01|holding:|  impression: 2026-05-01; /holding/impression"
            })
    void absurdAndWellFormedIsDoubted(String lines, String pointer) {
        assertThat(yaml(lines)).contains(pointer + ": expected");
    }
}
