package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.model.Case;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundTripTest {
    private static CaseReading read(String text, CaseFormat format) {
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "x", format);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 1})
    void readingWhatWasWrittenGivesTheSameCaseInBothFormats(double told) throws UnreadableTextException {
        RandomCases cases = new RandomCases(20260309, told);
        for (int i = 0; i < 15; i++) {
            Case c = cases.next();
            String json = CaseWriter.json(c);
            CaseReading back = read(json, CaseFormat.JSON);
            assertThat(back.errors()).as(json).isEmpty();
            assertThat(back.value()).contains(c);
            assertThat(CaseWriter.json(back.value().orElseThrow())).isEqualTo(json);
            String yaml = CaseTree.of(c).text(CaseFormat.YAML);
            CaseReading fromYaml = read(yaml, CaseFormat.YAML);
            assertThat(fromYaml.errors()).as(yaml).isEmpty();
            assertThat(fromYaml.value()).contains(c);
            assertThat(CaseTree.parse(yaml, CaseFormat.YAML).text(CaseFormat.JSON))
                    .isEqualTo(CaseTree.of(c).text(CaseFormat.JSON));
            assertThat(fromYaml.doubts())
                    .extracting(Problem::pointer)
                    .isEqualTo(back.doubts().stream().map(Problem::pointer).toList());
        }
    }

    /** Own part and shared part of an error come together again only to the last bit. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"overjet\": 0.2",
                "\"overjet\": -0.165",
                "\"overjet\": [0.69, 1, 0.73, 0.615]",
                "\"overjet\": {\"value\": -1.25, \"error\": 0.4567891234567891}",
                "\"overjet\": {\"repeats\": [0.2, 0.3, 0.2], \"error\": 0.333333333333333}"
            })
    void aLengthReadOnAPictureIsWrittenAsItWasRead(String overjet) {
        for (double scale = 0.37; scale < 20; scale += 0.37) {
            String json = """
                    {"fairlead": 1, "id": "demo-1", "bite": {%s}, "pictured": [
                      {"field": "/bite/overjet", "picture": 1, "scaleError": %.2f}]}""".formatted(overjet, scale);
            Case c = read(json, CaseFormat.JSON).value().orElseThrow();
            String written = CaseWriter.json(c);
            assertThat(read(written, CaseFormat.JSON).value()).as(json).contains(c);
            assertThat(written.contains("\"error\"")).as(written).isEqualTo(overjet.contains("error"));
        }
    }
}
