package dev.fairlead.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build makes of the facts is made anew by each; {@code CaseFactTest} holds it to the records. */
class CompiledComponentsTest {
    @TempDir
    Path folder;

    /** What an earlier build left is asked nothing, be it of other facts or no class at all. */
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
        Path made = folder.resolve("classes/dev/fairlead/facts/CompiledComponents.class");
        Files.writeString(made, "of another build");
        Process run = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-classpath",
                        folder.resolve("classes").toString(),
                        "src/build/CompileFacts.java",
                        folder.resolve("sources").toString(),
                        folder.resolve("classes").toString())
                .redirectErrorStream(true)
                .start();
        String told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(run.waitFor()).as(told).isZero();
        assertThat(Files.size(made)).isGreaterThan(1000);
    }
}
