package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Case;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundTripTest {
    private static Reading read(String text, Format format) {
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "x", format);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 1})
    void readingWhatWasWrittenGivesTheSameCaseInBothFormats(double told) throws UnreadableTextException {
        RandomCases cases = new RandomCases(20260309, told);
        for (int i = 0; i < 15; i++) {
            Case c = cases.next();
            String json = CaseWriter.json(c);
            Reading back = read(json, Format.JSON);
            assertThat(back.errors()).as(json).isEmpty();
            assertThat(back.value()).contains(c);
            assertThat(CaseWriter.json(back.value().orElseThrow())).isEqualTo(json);
            String yaml = CaseTree.of(c).text(Format.YAML);
            Reading fromYaml = read(yaml, Format.YAML);
            assertThat(fromYaml.errors()).as(yaml).isEmpty();
            assertThat(fromYaml.value()).contains(c);
            assertThat(CaseTree.parse(yaml, Format.YAML).text(Format.JSON))
                    .isEqualTo(CaseTree.of(c).text(Format.JSON));
            assertThat(fromYaml.doubts())
                    .extracting(Problem::pointer)
                    .isEqualTo(back.doubts().stream().map(Problem::pointer).toList());
        }
    }
}
