package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An audit that is stopped in the midst of its rows leaves nothing half written, and goes on to the same content. */
class StoppedAuditTest {
    private static final int KILLED = 128 + 9;
    private static final int TERMINATED = 128 + 15;

    @TempDir
    static Path folder;

    private static Path cases;

    @BeforeAll
    static void invent() {
        cases = folder.resolve("cases.ndjson");
        assertThat(CasesTest.run("cohort", "--n", "1500", "--seed", "5", "-o", cases.toString())
                        .code())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"xlsx", "parquet"})
    void killedAndResumedItIsTheSameToTheByte(String form) throws Exception {
        Path whole = folder.resolve("whole." + form);
        CasesTest.run(words(form, whole).toArray(String[]::new));
        Path cut = folder.resolve("cut." + form);
        Process audit = begun(form, cut);
        audit.destroyForcibly();
        assertThat(audit.waitFor()).isEqualTo(KILLED);
        assertThat(cut).doesNotExist();
        assertThat(CasesTest.run(Stream.concat(words(form, cut).stream(), Stream.of("--resume"))
                                .toArray(String[]::new))
                        .code())
                .isEqualTo(ExitCode.FINDINGS);
        assertThat(cut).hasSameBinaryContentAs(whole);
        assertThat(journal(cut)).doesNotExist();
    }

    @Test
    void toldToStopItTakesItsDraftWithIt() throws Exception {
        Path out = folder.resolve("told.csv");
        Process audit = begun("csv", out);
        audit.destroy();
        assertThat(audit.waitFor()).isEqualTo(TERMINATED);
        assertThat(out).doesNotExist();
        assertThat(journal(out)).exists();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(p -> p.getFileName().toString())).noneMatch(n -> n.startsWith(".told.csv"));
        }
    }

    private static List<String> words(String form, Path out) {
        return List.of(
                "audit",
                cases.toString(),
                "--without-forces",
                "--format",
                form,
                "--threads",
                "1",
                "-o",
                out.toString());
    }

    private static Path journal(Path out) {
        return out.resolveSibling(out.getFileName() + ".journal");
    }

    /** The audit in a process of its own, some rows of it done. */
    private static Process begun(String form, Path out) throws IOException, InterruptedException {
        List<String> command = Stream.of(
                        Stream.of(
                                Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Main.class.getName()),
                        words(form, out).stream(),
                        Stream.of("--resume"))
                .flatMap(s -> s)
                .toList();
        Process audit = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(2);
        while (audit.isAlive()
                && System.nanoTime() < end
                && !(Files.exists(journal(out)) && Files.size(journal(out)) > 200_000)) {
            Thread.sleep(5);
        }
        assertThat(audit.isAlive()).as("it was stopped in the midst").isTrue();
        return audit;
    }
}
