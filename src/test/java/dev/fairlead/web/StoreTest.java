package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.StaleException;
import dev.fairlead.web.store.StoreException;
import dev.fairlead.web.store.Stored;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The folder of cases: nothing is lost, whoever writes and whenever the power goes. */
class StoreTest {
    @TempDir
    Path dir;

    @Test
    void whoMayReadAndWriteStaysAsItWas() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        Path file = dir.resolve("shared.json");
        for (String rights : List.of("rw-rw-r--", "rw-------", "r--r-----")) {
            Files.deleteIfExists(file);
            Files.writeString(file, "{}\n");
            Files.setPosixFilePermissions(file, java.nio.file.attribute.PosixFilePermissions.fromString(rights));
            folder.save("shared.json", folder.read("shared.json").orElseThrow().version(), "{\"id\": 1}\n");
            assertThat(java.nio.file.attribute.PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo(rights);
        }
        folder.create("fresh.json", "{}\n");
        Path usual = Files.createFile(dir.resolve("usual"));
        assertThat(Files.getPosixFilePermissions(dir.resolve("fresh.json")))
                .isEqualTo(Files.getPosixFilePermissions(usual));
    }

    /** An administrator who saves a file of somebody takes it from nobody. */
    @Test
    void whoseAFileIsStaysAsItWas() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        Path file = dir.resolve("theirs.json");
        Files.writeString(file, "{}\n");
        try {
            Files.setOwner(
                    file, dir.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName("nobody"));
        } catch (java.nio.file.FileSystemException | java.nio.file.attribute.UserPrincipalNotFoundException e) {
            org.junit.jupiter.api.Assumptions.abort("only an administrator can give files away");
        }
        folder.save("theirs.json", folder.read("theirs.json").orElseThrow().version(), "{\"id\": 1}\n");
        assertThat(Files.getOwner(file).getName()).isEqualTo("nobody");
    }

    /** Locks of one machine need not be seen by another over a file share. */
    @Test
    void aFolderThatAnotherMachineServesIsRefusedUntilItsNoteIsOld() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        Path note = dir.resolve(".history/served-by.txt");
        folder.serve().close();
        assertThat(note).doesNotExist();
        Files.writeString(note, "another-machine\n");
        assertThatThrownBy(folder::serve).isInstanceOf(StoreException.class).hasMessageContaining("another-machine");
        Files.setLastModifiedTime(
                note,
                java.nio.file.attribute.FileTime.from(java.time.Instant.now().minusSeconds(600)));
        folder.serve().close();
    }

    /** A laptop that slept with the folder open wakes up while another machine serves it. */
    @Test
    void whoeverFindsAnotherMachineInItsPlaceChangesNothing() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        folder.create("a.json", "{}\n");
        String version = folder.read("a.json").orElseThrow().version();
        Path note = dir.resolve(".history/served-by.txt");
        try (dev.fairlead.web.store.ServedBy served = folder.serve()) {
            folder.save("a.json", version, "{\"id\": 1}\n");
            Files.writeString(note, "another-machine 1a2b\n");
            String now = folder.read("a.json").orElseThrow().version();
            assertThatThrownBy(() -> folder.save("a.json", now, "{}\n"))
                    .isInstanceOf(StoreException.class)
                    .hasMessage("This folder is being served by another machine, another-machine");
            assertThatThrownBy(() -> folder.create("b.json", "{}\n")).isInstanceOf(StoreException.class);
            assertThatThrownBy(() -> folder.archive("a.json")).isInstanceOf(StoreException.class);
            assertThat(folder.read("a.json").orElseThrow().version()).isEqualTo(now);
            served.touch();
        }
        assertThat(Files.readString(note)).as("the note of the other").startsWith("another-machine");
    }

    @Test
    void aSaveFromAnOlderVersionIsRefused() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        Stored first = folder.create("a.json", "{\"n\":1}");
        Stored second = folder.save("a.json", first.version(), "{\"n\":2}");
        assertThatThrownBy(() -> folder.save("a.json", first.version(), "{\"n\":3}"))
                .isInstanceOf(StaleException.class)
                .hasMessage("a.json was changed meanwhile");
        assertThat(Files.readString(dir.resolve("a.json"))).isEqualTo("{\"n\":2}");
        assertThat(folder.version("a.json", first.version()))
                .hasValueSatisfying(v -> assertThat(v.text()).isEqualTo("{\"n\":1}"));
        assertThat(folder.read("a.json")).contains(second);
    }

    @Test
    void undoGoesBackStepByStepAndRedoForward() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        Stored now = folder.create("a.json", "one");
        now = folder.save("a.json", now.version(), "two");
        now = folder.save("a.json", now.version(), "three");
        now = folder.undo("a.json", now.version()).orElseThrow();
        assertThat(now.text()).isEqualTo("two");
        now = folder.undo("a.json", now.version()).orElseThrow();
        assertThat(now.text()).isEqualTo("one");
        assertThat(folder.undo("a.json", now.version())).isEmpty();
        now = folder.redo("a.json", now.version()).orElseThrow();
        assertThat(now.text()).isEqualTo("two");
        now = folder.save("a.json", now.version(), "four");
        assertThat(folder.redo("a.json", now.version()))
                .as("a change ends what could be done again")
                .isEmpty();
        assertThat(folder.undo("a.json", now.version()).orElseThrow().text()).isEqualTo("two");
    }

    @Test
    void theFirstVersionIsKeptHoweverManyFollow() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        Stored first = folder.create("a.yaml", "# a comment of the practice\n");
        Stored now = first;
        for (int i = 0; i < 110; i++) {
            now = folder.save("a.yaml", now.version(), "n: " + i + "\n");
        }
        assertThat(folder.version("a.yaml", first.version()))
                .hasValueSatisfying(v -> assertThat(v.text()).contains("a comment of the practice"));
        assertThat(folder.steps("a.yaml")[0]).isEqualTo(101);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x.json", "a/b.json", ".hidden.json", "x.txt", "a b.json", "CON..json", "", "ä.json"})
    void aNewFileHasAPlainName(String name) throws IOException {
        CaseFolder folder = CaseFolder.open(dir.resolve("in"));
        assertThatThrownBy(() -> folder.create(name, "{}")).isInstanceOf(StoreException.class);
        try (Stream<Path> all = Files.walk(dir)) {
            assertThat(all.filter(Files::isRegularFile).map(p -> p.getFileName().toString()))
                    .doesNotContain("x.json", "b.json", ".hidden.json", "x.txt");
        }
    }

    @Test
    void aNameThatDiffersOnlyInCapitalsIsTaken() throws IOException {
        CaseFolder folder = CaseFolder.open(dir);
        folder.create("Case-1.json", "{}");
        assertThatThrownBy(() -> folder.create("case-1.JSON", "{}"))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("already");
    }

    /** Two servers on one folder: every save that was confirmed is in the end or among the earlier versions. */
    @Test
    void manyWritersLoseNothing() throws Exception {
        CaseFolder.open(dir).create("a.json", "0");
        List<Thread> threads = new ArrayList<>();
        List<String> confirmed = java.util.Collections.synchronizedList(new ArrayList<>());
        for (int t = 0; t < 4; t++) {
            int me = t;
            CaseFolder own = CaseFolder.open(dir);
            Thread thread = new Thread(() -> {
                for (int i = 0; i < 25; i++) {
                    try {
                        confirmed.add(own.save(
                                        "a.json",
                                        own.read("a.json").orElseThrow().version(),
                                        me + "-" + i)
                                .version());
                    } catch (StaleException e) {
                        // another was quicker, and this save was not confirmed
                        Thread.onSpinWait();
                    }
                }
            });
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        CaseFolder folder = CaseFolder.open(dir);
        String last = folder.read("a.json").orElseThrow().version();
        assertThat(confirmed)
                .isNotEmpty()
                .allSatisfy(v -> assertThat(
                                v.equals(last) || folder.version("a.json", v).isPresent())
                        .isTrue());
    }
}
