package dev.fairlead.rules.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong with kept classes costs time, never a run. */
class RuleCacheTest {
    @TempDir
    private Path folder;

    @Test
    void damagedClassesAreCompiledAgain() throws IOException {
        RuleCache cache = cache();
        List<String> made = classes(cache);
        Path kept = kept();
        byte[] whole = Files.readAllBytes(kept);
        for (byte[] damaged :
                List.of(new byte[0], "not a zip".getBytes(java.nio.charset.StandardCharsets.US_ASCII), half(whole))) {
            Files.write(kept, damaged);
            assertThat(classes(cache)).isEqualTo(made);
            assertThat(Files.size(kept)).isGreaterThan(damaged.length);
        }
    }

    /** The second run takes what the first has kept, to the byte, and writes nothing. */
    @Test
    void whatIsKeptIsWhatWasCompiled() throws IOException {
        List<CompiledRules> made = compiled(cache());
        FileTime written = FileTime.fromMillis(0);
        Files.setLastModifiedTime(kept(), written);
        List<CompiledRules> again = compiled(cache());
        assertThat(Files.getLastModifiedTime(kept())).isEqualTo(written);
        assertThat(again).hasSameSizeAs(made);
        assertThat(again.get(0).model()).isEqualTo(made.get(0).model());
        assertThat(again.get(0).classes())
                .containsOnlyKeys(made.get(0).classes().keySet());
        made.get(0)
                .classes()
                .forEach((path, bytes) ->
                        assertThat(again.get(0).classes().get(path)).as(path).isEqualTo(bytes));
    }

    @Test
    void whatCannotBeKeptIsUsedAllTheSame() throws IOException {
        RuleCache cache = cache();
        List<String> made = classes(cache);
        Path kept = kept();
        Files.delete(kept);
        // a folder that is not empty cannot be replaced by a file: the writing fails at its last step
        Files.createDirectories(kept.resolve("in the way"));
        assertThat(classes(cache)).isEqualTo(made);
        try (Stream<Path> left = Files.list(kept.getParent())) {
            assertThat(left).as("no half-written file is left").containsExactly(kept);
        }
    }

    @Test
    void whatIsKeptIsCountedAndWhatIsDamagedNamed() throws IOException {
        RuleCache cache = cache();
        classes(cache);
        Path kept = kept();
        assertThat(cache.holds()).isEqualTo(new RuleCache.Holds(folder.resolve("rules"), 1, 0, Files.size(kept)));
        Files.write(kept, half(Files.readAllBytes(kept)));
        assertThat(cache.holds()).isEqualTo(new RuleCache.Holds(folder.resolve("rules"), 1, 1, Files.size(kept)));
        try (Stream<Path> left = Files.list(kept.getParent())) {
            assertThat(left).as("nothing is left of the trial").containsExactly(kept);
        }
    }

    @Test
    void aFolderThatOthersCouldWriteToIsTold() throws IOException {
        RuleCache cache = cache();
        classes(cache);
        Files.setPosixFilePermissions(folder.resolve("rules"), PosixFilePermissions.fromString("rwxrwx---"));
        assertThatThrownBy(cache::holds)
                .isInstanceOf(IOException.class)
                .hasMessageContaining(
                        folder.resolve("rules") + " cannot be used, or others than you could write to it");
    }

    private RuleCache cache() {
        return new RuleCache(folder.resolve("rules"));
    }

    private Path kept() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("rules"))) {
            return all.findFirst().orElseThrow();
        }
    }

    private static List<CompiledRules> compiled(RuleCache cache) throws IOException {
        String path = "indication/overjet-after/criterion.drl";
        return cache.compile(Map.of(path, Files.readString(Path.of("rules").resolve(path))), List.of());
    }

    private static List<String> classes(RuleCache cache) throws IOException {
        return compiled(cache).stream()
                .flatMap(c -> c.classes().keySet().stream())
                .toList();
    }

    private static byte[] half(byte[] whole) {
        return Arrays.copyOf(whole, whole.length / 2);
    }

    @Test
    void aFolderThatCannotBeMadeIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("no-folder"), "");
        assertThatThrownBy(() -> new RuleCache(file.resolve("rules")).holds())
                .isInstanceOf(IOException.class)
                .hasMessageContaining("cannot be used");
    }
}
