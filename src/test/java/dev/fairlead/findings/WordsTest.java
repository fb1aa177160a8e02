package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words for what a pointer points at. */
class WordsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /teeth/41/gingivaThickness  | gingival thickness of tooth 41
            /bite/overjet               | overjet, bite
            /visits/1/left/standOff     | stand-off, visit 2, left
            /visits                     | everything about visits
            /hardware/left/loose        | loose, hardware, left
            /bite/notOfTheFormat        | not of the format, bite
            /teeth/42/width/-           | second reading of width of tooth 42
            /teeth/42                   | tooth 42
            /visits/0                   | visit 1
            /hardware/brackets/31/slot  | slot, bracket of tooth 31
            """)
    void aPointerReadsAsWords(String pointer, String words) {
        assertThat(Words.of(pointer)).isEqualTo(words);
    }

    @Test
    void everyFactOfTheCaseModelHasWordsOfItsOwn() {
        List<String> pointers = new ArrayList<>();
        gather(RecordShape.ofCase(), "", pointers);
        Map<String, String> seen = new HashMap<>();
        List<String> faults = new ArrayList<>();
        for (String pointer : pointers) {
            String words = Words.of(pointer);
            String other = seen.put(words, pointer);
            if (words.isBlank() || words.contains("/") || other != null) {
                faults.add(pointer + ": " + words + (other == null ? "" : " is also " + other));
            }
        }
        assertThat(pointers).hasSizeGreaterThan(150);
        assertThat(faults).isEmpty();
    }

    private static void gather(RecordShape shape, String at, List<String> pointers) {
        for (FieldShape f : shape.fields()) {
            String pointer = at + "/" + RecordShape.escape(f.key());
            if (f.kind().fact()) {
                pointers.add(pointer);
            } else if (f.kind() == Kind.RECORD || f.kind() == Kind.LIST || f.kind() == Kind.TOOTH_MAP) {
                gather(
                        f.nested(),
                        pointer + (f.kind() == Kind.LIST ? "/0" : f.kind() == Kind.TOOTH_MAP ? "/41" : ""),
                        pointers);
            }
        }
    }
}
