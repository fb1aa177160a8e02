package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every demo case gives the report that is kept beside the tests, to the byte. After a change that is meant, run the
 * tests with {@code -Dfairlead.accept=true} and read the difference.
 */
class CasesTest {
    private static final Path EXPECTED = Path.of("src/test/resources/expected");

    record Run(int code, String out, String err) {}

    static Run run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8));
        int code = Main.run(console, args);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static List<Path> cases() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("cases"))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void tellsTheSameStory(Path file) throws IOException {
        Run run = run("check", file.toString());
        String told = "exit " + run.code() + "\n" + run.out() + run.err();
        Path expected = EXPECTED.resolve(file.getFileName().toString().replaceAll("\\.(yaml|json)$", "") + ".txt");
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.writeString(expected, told);
        }
        assertThat(told).isEqualTo(Files.readString(expected));
        assertThat(run.code()).as(run.err()).isIn(0, 3, 4);
        assertThat(told.lines()
                        .filter(l -> l.codePointCount(0, l.length()) > 80
                                && l.strip().contains(" ")
                                && !l.contains("/"))
                        .toList())
                .as("lines that do not fit in 80 columns")
                .isEmpty();
        assertThat(told.toLowerCase(java.util.Locale.ROOT)).doesNotContainPattern("\\bsafe\\b");
    }

    @Test
    void theSameCaseGivesTheSameBytes() {
        assertThat(run("check", "--format", "json", "cases/heron-07-clean.yaml"))
                .isEqualTo(run("check", "--format", "json", "cases/heron-07-clean.yaml"));
    }

    @Test
    void saysByExitCodeWhatHappened() {
        assertThat(run("check", "--fail-on", "never", "cases/avocet-03-thin-and-steep.yaml")
                        .code())
                .isZero();
        assertThat(run("check", "cases/avocet-03-thin-and-steep.yaml").code()).isEqualTo(4);
        assertThat(run("check", "cases/gull-13-full-of-slips.yaml").code()).isEqualTo(3);
        assertThat(run("check", "no-such-file.yaml").code()).isEqualTo(3);
        assertThat(run("check").code()).isEqualTo(2);
        assertThat(run("criteria", "no-such-criterion").code()).isEqualTo(2);
    }

    @Test
    void readmeShowsRealOutput() throws IOException {
        Path file = Path.of("README.md");
        String readme = Files.readString(file);
        int from = readme.indexOf("```text\n") + 8;
        int to = readme.indexOf("```", from);
        String told = run("check", "--stage", "records", "cases/knot-08-half-missing.yaml")
                .out()
                .replace("Fairlead development", "Fairlead 0.1.0");
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.writeString(file, readme.substring(0, from) + told + readme.substring(to));
        }
        assertThat(told).isEqualTo(Files.readString(file).substring(from, from + told.length()));
        assertThat(Files.readString(file).substring(from + told.length())).startsWith("```");
    }
}
