package dev.fairlead.model.shape;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Field;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build compiled of the case records is what they say of themselves. */
class CompiledRecordsTest {
    @TempDir
    Path folder;

    record Other(@Field(value = "Any.", key = "else") Answer any) {}

    @Test
    void theCodeSaysWhatReflectionSays() {
        Set<Class<? extends Record>> types = new LinkedHashSet<>();
        collect(RecordShape.ofCase(), types);
        assertThat(types).hasSizeGreaterThan(20);
        for (Class<? extends Record> type : types) {
            RecordCode code = RecordShape.compiled().of(type);
            RecordCode reflected = new ReflectedRecord(type);
            assertThat(code).as(type.getName()).isNotNull();
            assertThat(code.fields()).as(type.getName()).isEqualTo(reflected.fields());
            Object[] values = new Object[code.fields().length];
            for (FieldShape f : code.fields()) {
                values[f.index()] = RecordShape.blankOf(f, "/" + f.key());
            }
            Record made = code.make(values);
            assertThat(made).isEqualTo(reflected.make(values));
            for (int i = 0; i < values.length; i++) {
                assertThat(code.get(made, i)).isEqualTo(values[i]).isEqualTo(reflected.get(made, i));
            }
        }
    }

    @Test
    void otherRecordsAreReadByReflection() {
        RecordShape shape = RecordShape.of(Other.class);
        assertThat(RecordShape.compiled().of(Other.class)).isNull();
        assertThat(shape.fields()).extracting(FieldShape::key).containsExactly("else");
        assertThat(shape.fields().get(0).get(shape.make(new Object[] {Answer.YES})))
                .isEqualTo(Answer.YES);
    }

    /** What an earlier build left is asked nothing, be it of other records or no class at all. */
    @Test
    void whatAnEarlierBuildMadeIsReplaced() throws IOException, InterruptedException {
        Path built = Path.of("target/classes");
        for (String part : List.of("dev/fairlead/model", "dev/fairlead/facts")) {
            try (Stream<Path> all = Files.walk(built.resolve(part))) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    Path copy = folder.resolve("classes").resolve(built.relativize(file));
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy);
                }
            }
        }
        List<Path> made = Stream.of("model/shape/CompiledRecords.class", "facts/CompiledComponents.class")
                .map(folder.resolve("classes/dev/fairlead")::resolve)
                .toList();
        for (Path file : made) {
            Files.writeString(file, "of another build");
        }
        Process run = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-classpath",
                        folder.resolve("classes").toString(),
                        "src/build/CompileRecords.java",
                        folder.resolve("sources").toString(),
                        folder.resolve("classes").toString())
                .redirectErrorStream(true)
                .start();
        String told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor()).as(told).isZero();
        assertThat(made).allSatisfy(file -> assertThat(Files.size(file)).isGreaterThan(1000));
    }

    private static void collect(RecordShape shape, Set<Class<? extends Record>> types) {
        if (types.add(shape.type())) {
            shape.fields().stream()
                    .filter(f -> f.element() != null && f.element().isRecord())
                    .forEach(f -> collect(f.nested(), types));
        }
    }
}
