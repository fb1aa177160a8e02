package dev.fairlead.intake.write;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.RandomCases;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped schema against an independent validator (networknt) and against the reader. */
class CaseSchemaTest {
    private static final Path SHIPPED = Path.of("src/main/resources/schema/fairlead-case.schema.json");

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(CaseSchema.text(), InputFormat.JSON);

    private static boolean valid(String text, InputFormat format) {
        return SCHEMA.validate(text, format).isEmpty();
    }

    private static CaseReading read(String text) {
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "x", CaseFormat.BY_NAME);
    }

    @Test
    void theShippedSchemaIsTheOneThatTheRecordsMake() throws IOException {
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.writeString(SHIPPED, CaseSchemaGenerator.generate());
            return;
        }
        assertThat(CaseSchema.text()).isEqualTo(CaseSchemaGenerator.generate());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.6, 1})
    void whatTheReaderTakesWithoutProblemsIsValid(double told) {
        RandomCases cases = new RandomCases(41, told);
        for (int i = 0; i < 12; i++) {
            Case c = cases.next();
            String json = CaseWriter.json(c);
            assertThat(read(json).errors()).isEmpty();
            assertThat(SCHEMA.validate(json, InputFormat.JSON)).as(json).isEmpty();
        }
    }

    @Test
    void theBlankAndTheMinimalCaseAreValid() throws UnreadableTextException {
        for (String yaml : new String[] {BlankCase.text(Stage.HOLDING), BlankCase.minimal()}) {
            assertThat(SCHEMA.validate(CaseTree.parse(yaml, CaseFormat.YAML).text(CaseFormat.JSON), InputFormat.JSON))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"value\":5.4}",
                "{\"value\":\"0.21 in\"}",
                "{\"repeats\":[5.4,\"5,5 mm\"],\"error\":0.1}",
                "{\"repeats\":[0.21],\"unit\":\"in\"}",
                "[5.4]",
                "\"5.4\"",
                "\".21\\\"\"",
                "\"unknown\"",
                "5"
            })
    void everyFormOfAQuantityIsTakenByBoth(String width) {
        String json =
                "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\",\"teeth\":{\"31\":{\"width\":" + width + "}}}";
        assertThat(read(json).problems()).isEmpty();
        assertThat(valid(json, InputFormat.JSON)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"teeth\":{\"19\":{}}",
                "\"teeth\":{\"31\":{\"width\":1}}",
                "\"teeth\":{\"31\":{\"width\":null}}",
                "\"teeth\":{\"31\":{\"width\":[]}}",
                "\"teeth\":{\"31\":{\"width\":{\"value\":5,\"repeats\":[5]}}}",
                "\"teeth\":{\"31\":{\"width\":{}}}",
                "\"teeth\":{\"31\":{\"width\":{\"value\":5,\"sd\":1}}}",
                "\"teeth\":{\"31\":{\"width\":true}}",
                "\"teeth\":{\"31\":{\"width\":\"1.234,5\"}}",
                "\"teeth\":{\"31\":{\"width\":\"does-not-apply\"}}",
                "\"teeth\":{\"31\":{\"state\":\"Erupted\"}}",
                "\"teeth\":{\"31\":{\"state\":1}}",
                "\"teeth\":[]",
                "\"visits\":{}",
                "\"visits\":[1]",
                "\"date\":\"9.3.2026\"",
                "\"date\":20260309",
                "\"child\":{\"age\":3}",
                "\"child\":{\"name\":\"x\"}",
                "\"consent\":{\"guardian\":\"maybe\"}",
                "\"consent\":{\"guardian\":1}",
                "\"bench\":{\"rebends\":1.5}",
                "\"bench\":{\"rebends\":[1,2]}",
                "\"insertion\":{\"time\":\"25:00\"}",
                "\"landmarks\":[{\"tooth\":9}]",
                "\"contacts\":{\"41-42\":1}",
                "\"surprise\":1",
                "\"waivers\":[{\"criterion\":\"Not An Id\"}]"
            })
    void whatIsWrongInFormFailsBoth(String part) {
        String json = "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\"," + part + "}";
        assertThat(read(json).read()).isFalse();
        assertThat(valid(json, InputFormat.JSON)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "[]",
                "1",
                "{\"fairlead\":2,\"id\":\"a\",\"stage\":\"records\"}",
                "{\"fairlead\":1,\"id\":\"a b\",\"stage\":\"records\"}",
                "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"soon\"}",
                "{\"fairlead\":1,\"stage\":\"records\"}",
                "{\"fairlead\":\"1\",\"id\":\"a\",\"stage\":\"records\"}"
            })
    void whatMustBeThereIsAskedForByBoth(String json) {
        assertThat(read(json).read()).isFalse();
        assertThat(valid(json, InputFormat.JSON)).isFalse();
    }
}
