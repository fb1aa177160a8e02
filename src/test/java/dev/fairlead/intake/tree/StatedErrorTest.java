package dev.fairlead.intake.tree;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A quantity with an error of its own, as a person types it. One inch is exactly 25.4 mm: international yard and pound
 * agreement of 1959.
 */
class StatedErrorTest {
    private static CaseTree typed(String pointer, String text) {
        CaseTree tree = CaseTree.empty();
        tree.set("/id", "a-1");
        tree.set("/stage", "bench");
        tree.set(pointer, text);
        return tree;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/bite/overjet | 3.5 ± 0.4 | 3.5 | 0.4 | 3.5 ± 0.4",
                "/bite/overjet | 3,5±0,4 | 3.5 | 0.4 | 3.5 ± 0.4",
                "/bite/overjet | 3.5 +/- 0.4 mm | 3.5 | 0.4 | 3.5 mm ± 0.4 mm",
                "/bite/overjet | 0 +- 0.5 | 0 | 0.5 | 0 ± 0.5",
                "/bite/lowerMidline | −1.5 ± 0.3 | -1.5 | 0.3 | -1.5 ± 0.3",
                "/bite/overjet | 3.4; 3.6 ± 0.2 | 3.5 | 0.2 | 3.4; 3.6 ± 0.2",
                "/wire/size | 0.020 in ± 0.001 | 0.508 | 0.0254 | 0.020 in ± 0.001 in",
                "/wire/size | 0.020 ± 0.001 in | 0.508 | 0.0254 | 0.020 in ± 0.001 in",
                "/wire/size | 0.020 in ± 0.01 mm | 0.508 | 0.01 | 0.020 in ± 0.01 mm"
            })
    void isReadAndShownAgain(String pointer, String text, double value, double error, String shown) {
        CaseTree tree = typed(pointer, text);
        CaseReading reading = tree.read("a");
        assertThat(reading.errors()).isEmpty();
        Measured m = (Measured) Edit.get(reading.value().orElseThrow(), pointer);
        assertThat(m.value()).isEqualTo(value);
        assertThat(m.sd()).isEqualTo(error);
        assertThat(tree.get(pointer)).contains(shown);
        Case again = typed(pointer, shown).read("a").value().orElseThrow();
        assertThat(Edit.get(again, pointer)).as("what is shown can be typed").isEqualTo(m);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"3.5 ± ", "± 0.4", "3.5 ± 0.4 ± 0.1", "3.5 ± -0.4", "0.1 in ± 2 weeks", "3.5 ± 90", "abc ± 1"})
    void whatSaysNothingOfTheKindIsRefused(String text) {
        assertThat(typed("/bite/overjet", text).read("a").errors()).isNotEmpty();
    }

    @Test
    void anObjectWithoutAnErrorReadsAsItsValue() throws Exception {
        CaseTree tree = CaseTree.parse(
                "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"bench\",\"bite\":{\"overjet\":{\"value\":0.1,\"unit\":\"in\"}},\"odd\":{\"value\":[{}]}}",
                CaseFormat.JSON);
        assertThat(tree.get("/bite/overjet")).contains("0.1 in");
        assertThat(tree.get("/odd")).hasValueSatisfying(t -> assertThat(t).startsWith("{"));
    }
}
