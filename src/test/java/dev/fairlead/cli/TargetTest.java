package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No command writes over what it reads, nor over another file unless it is told to. */
class TargetTest {
    private static final Path CASE = Path.of("cases/curlew-09-fold-digs-in.yaml");

    @TempDir
    Path folder;

    private Path copy(String name) throws IOException {
        return Files.copy(CASE, folder.resolve(name));
    }

    @ParameterizedTest
    @CsvSource({"check --format html,case.yaml", "check,case.yaml", "sheet,case.pdf"})
    void whatIsReadIsNeverWrittenOver(String command, String name) throws IOException {
        Path read = copy(name);
        String[] words = (command + " --force -o").split(" ");
        String[] call = java.util.Arrays.copyOf(words, words.length + 2);
        call[words.length] = read.toString();
        call[words.length + 1] = folder.resolve(".").resolve(name).toString();
        CasesTest.Run run = CasesTest.run(call);
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("is read by this command");
        assertThat(read).hasSameTextualContentAs(CASE);
    }

    @Test
    void anotherFileIsWrittenOverWithForceAlone() throws IOException {
        Path notes = Files.writeString(folder.resolve("notes.txt"), "my own words");
        CasesTest.Run refused = CasesTest.run("check", "-o", notes.toString(), CASE.toString());
        assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
        assertThat(refused.err()).contains("exists already", "--force");
        assertThat(notes).hasContent("my own words");
        assertThat(CasesTest.run("check", "--force", "-o", notes.toString(), CASE.toString())
                        .code())
                .isEqualTo(ExitCode.FINDINGS);
        assertThat(notes).content().startsWith("Case curlew-09");
    }

    @Test
    void rightsAndLinksAreKept() throws IOException {
        Path real = Files.writeString(folder.resolve("real.txt"), "old");
        Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), real);
        WholeFile.write(link, new byte[] {'n', 'e', 'w'});
        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(real)))
                .isEqualTo("rw-r-----");
        try (var left = Files.list(folder)) {
            assertThat(left).hasSize(2);
        }
    }

    @Test
    void aDeviceIsWrittenToAndNotReplaced() {
        Path nothing = Path.of("/dev/null");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(nothing));
        WholeFile.write(nothing, new byte[] {1});
        assertThat(Files.isRegularFile(nothing)).isFalse();
        assertThat(nothing).exists();
    }

    @Test
    void aTableIsForAnAudit() throws IOException {
        CasesTest.Run run = CasesTest.run(
                "check", Files.writeString(folder.resolve("many.csv"), "id").toString());
        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("write: audit ");
    }
}
