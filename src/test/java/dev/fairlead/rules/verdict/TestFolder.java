package dev.fairlead.rules.verdict;

import dev.fairlead.rules.engine.RuleCache;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A small rulebase on disk, made of two criteria of the project, for tests that change one. */
public final class TestFolder {
    public static final String OVERJET = "indication/overjet-after";
    public static final String HYGIENE = "indication/hygiene-and-caries";

    private final Path folder;

    public TestFolder(Path folder) {
        this.folder = folder;
    }

    /** A whole rulebase with {@code overjet-after} and {@code hygiene-and-caries}. */
    public static TestFolder whole(Path folder) {
        TestFolder made = new TestFolder(folder);
        made.copy("sources.json");
        made.write(
                "rulebase.json",
                "{\"version\": \"test\", \"causes\": {}, \"order\": {\"indication\": [\"overjet-after\", \"hygiene-and-caries\"]}}");
        for (String criterion : List.of(OVERJET, HYGIENE)) {
            made.copy(criterion + "/criterion.drl");
            made.copy(criterion + "/criterion.json");
        }
        return made;
    }

    private void copy(String path) {
        write(path, read(Path.of("rules").resolve(path)));
    }

    public TestFolder write(String path, String text) {
        try {
            Path file = folder.resolve(path);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public TestFolder replace(String path, String old, String by) {
        String text = read(folder.resolve(path));
        if (!text.contains(old)) {
            throw new IllegalArgumentException(path + " has no " + old);
        }
        return write(path, text.replace(old, by));
    }

    public Rulebase load() {
        return Rulebase.fromFolder(folder, new RuleCache(Path.of("target", "rule-cache")));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
