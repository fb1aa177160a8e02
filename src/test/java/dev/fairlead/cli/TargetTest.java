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

    /** A dash is standard output everywhere, and never a file of that name. */
    @Test
    void aDashIsNoFile() throws IOException {
        Path table = Files.writeString(folder.resolve("mine.csv"), "id,stage\na,records\n");
        CasesTest.Run proposed = CasesTest.run("audit", table.toString(), "--propose-mapping", "-");
        assertThat(proposed.code()).isZero();
        assertThat(proposed.out()).startsWith("{").contains("\"columns\"");
        CasesTest.Run refused = CasesTest.run("audit", table.toString(), "-o", "-");
        assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
        assertThat(refused.err()).contains("standard output");
        assertThat(Path.of("-")).doesNotExist();
    }

    @Test
    void aNameThatTheLocaleCannotHoldIsToldWithoutWordsOfALibrary() {
        for (String name : new String[] {"\0", "\uFFFD\uFFFD\0"}) {
            CasesTest.Run checked = CasesTest.run("check", name);
            assertThat(checked.code()).isEqualTo(ExitCode.UNREADABLE);
            CasesTest.Run audited = CasesTest.run("audit", name);
            assertThat(audited.code()).isEqualTo(ExitCode.USAGE);
            assertThat(checked.err() + audited.err())
                    .doesNotContain("Exception", "Path.", "unmappable")
                    .contains(name.length() > 1 ? "LC_ALL=C.UTF-8" : "look at the name");
        }
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
    void anAuditWritesToADeviceAndDoesNotReplaceIt() throws IOException {
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(Path.of("/dev/null")));
        Path link = Files.createSymbolicLink(folder.resolve("out.csv"), Path.of("/dev/null"));
        CasesTest.Run run = audit(link);
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.FINDINGS);
        assertThat(link).isSymbolicLink();
        assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
    }

    @Test
    void anAuditThatCannotWriteEverythingSaysSo() throws IOException {
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(Path.of("/dev/full")));
        CasesTest.Run run = audit(Files.createSymbolicLink(folder.resolve("full.csv"), Path.of("/dev/full")));
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("cannot be written").hasLineCount(1);
    }

    @Test
    void anAuditTouchesNoFileBesideItsOwn() throws IOException {
        Path own = Files.writeString(folder.resolve("rows.csv.part"), "mine");
        assertThat(audit(folder.resolve("rows.csv")).code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(own).hasContent("mine");
        Path letters = Files.writeString(folder.resolve("more.csv.journal"), "Dear diary");
        CasesTest.Run refused = audit(folder.resolve("more.csv"), "--resume");
        assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
        assertThat(refused.err()).contains("no journal of an audit");
        assertThat(letters).hasContent("Dear diary");
    }

    private static CasesTest.Run audit(Path to, String... more) {
        return CasesTest.run(java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(
                                "audit", CASE.toString(), "--without-forces", "--format", "csv", "-o", to.toString()),
                        java.util.stream.Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void whatKilledRunsLeftIsClearedAway() throws IOException {
        Path target = folder.resolve("out.txt");
        Path dead = Files.writeString(folder.resolve(".out.txt.999999999-1.part"), "half");
        Path young = Files.writeString(folder.resolve(".out.txt.999999998-1.part"), "half");
        Path running = Files.writeString(
                folder.resolve(".out.txt." + ProcessHandle.current().pid() + "-1.part"), "half");
        var old = java.nio.file.attribute.FileTime.from(java.time.Instant.now().minus(java.time.Duration.ofHours(1)));
        Files.setLastModifiedTime(dead, old);
        Files.setLastModifiedTime(running, old);
        WholeFile.write(target, new byte[] {'n', 'e', 'w'});
        assertThat(target).hasContent("new");
        assertThat(dead).doesNotExist();
        assertThat(young).exists();
        assertThat(running).exists();
    }

    @Test
    void aTableIsForAnAudit() throws IOException {
        CasesTest.Run run = CasesTest.run(
                "check", Files.writeString(folder.resolve("many.csv"), "id").toString());
        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("write: audit ");
    }
}
