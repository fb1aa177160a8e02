package dev.fairlead.web.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What killed saves left is cleared away at start, and what only looks like a case is told and not listed. */
class LeftoversTest {
    @TempDir
    Path folder;

    @Test
    void draftsOfKilledSavesGoWhenTheFolderIsServed() throws IOException {
        Path history = Files.createDirectories(folder.resolve(".history"));
        Path draft = Files.writeString(history.resolve("saving-0b7c.part"), "half a case");
        Path other = Files.writeString(history.resolve("notes.part"), "somebody's own");
        CaseFolder.open(folder).serve().close();
        assertThat(draft).doesNotExist();
        assertThat(other).exists();
    }

    @Test
    void linksAndFoldersThatAreCalledLikeCasesAreTold() throws IOException {
        Files.writeString(folder.resolve("a.yaml"), "fairlead: 1");
        Files.createSymbolicLink(folder.resolve("b\u001b[31m.yaml"), Path.of("/etc/passwd"));
        Files.createDirectory(folder.resolve("c.json"));
        CaseFolder cases = CaseFolder.open(folder);
        assertThat(cases.names()).containsExactly("a.yaml");
        assertThat(cases.passedOver()).hasSize(2).noneMatch(n -> n.indexOf('\u001b') >= 0);
        assertThat(cases.passedOver().toString()).contains("c.json", ".yaml");
    }

    @Test
    void aClockThatWasSetBackLosesNoVersion() throws IOException {
        CaseFolder cases = CaseFolder.open(folder);
        Stored first = cases.create("a.yaml", "one");
        Stored second = cases.save("a.yaml", first.version(), "two");
        try (ServedBy served = cases.serve();
                Stream<Path> all = Files.walk(folder)) {
            // all that was written until now was written two days from now
            for (Path p : all.toList()) {
                Files.setLastModifiedTime(p, FileTime.from(Instant.now().plus(Duration.ofDays(2))));
            }
            served.touch();
            Stored third = cases.save("a.yaml", second.version(), "three");
            Stored undone = cases.undo("a.yaml", third.version()).orElseThrow();
            assertThat(undone.text()).isEqualTo("two");
            assertThat(cases.undo("a.yaml", undone.version()).orElseThrow().text())
                    .isEqualTo("one");
        }
        cases.serve().close();
    }

    @Test
    void aSavedCaseKeepsItsRights() throws IOException {
        CaseFolder cases = CaseFolder.open(folder);
        Stored made = cases.create("a.yaml", "one");
        Path file = folder.resolve("a.yaml");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        cases.save("a.yaml", made.version(), "two");
        assertThat(file).hasContent("two");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
    }
}
