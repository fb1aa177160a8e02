package dev.fairlead.rules.catalogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The files of a rulebase by path below its folder, wherever they come from. */
public final class RuleFiles {
    public static final String RULEBASE = "rulebase.json";
    public static final String SOURCES = "sources.json";
    public static final String THRESHOLDS = "thresholds.json";
    /** What a clinic's own cases have shown. */
    public static final String CLINIC = "clinic.json";

    public static final String DRL = "criterion.drl";
    public static final String TEXTS = "criterion.json";

    /** A rulebase is small; anything larger than this is a slip of the folder. */
    private static final int MOST_FILES = 5000;

    private final TreeMap<String, byte[]> byPath;

    RuleFiles(Map<String, byte[]> byPath) {
        this.byPath = new TreeMap<>(byPath);
    }

    /** Reads the files that make a rulebase from a folder; examples and anything else are left alone. */
    public static RuleFiles of(Path folder) {
        Map<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder, 3, new FileVisitOption[0])) {
            for (Path file : walk.filter(Files::isRegularFile).limit(MOST_FILES).toList()) {
                String path = folder.relativize(file).toString().replace('\\', '/');
                if (belongs(path)) {
                    found.put(path, Files.readAllBytes(file));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the rulebase in " + folder + ": " + e.getMessage(), e);
        }
        return new RuleFiles(found);
    }

    /** Files whose texts are given by path. */
    public static RuleFiles of(Map<String, String> texts) {
        Map<String, byte[]> bytes = new TreeMap<>();
        texts.forEach((path, text) -> bytes.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return new RuleFiles(bytes);
    }

    private static boolean belongs(String path) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        boolean top = !path.contains("/");
        return top
                ? List.of(RULEBASE, SOURCES, THRESHOLDS, CLINIC).contains(name)
                : List.of(DRL, TEXTS).contains(name);
    }

    public Map<String, byte[]> all() {
        return Collections.unmodifiableMap(byPath);
    }

    /** The text of a file, or null when it is not there. */
    public @Nullable String text(String path) {
        byte[] bytes = byPath.get(path);
        return bytes == null ? null : new String(bytes, StandardCharsets.UTF_8);
    }

    /** Folders of criteria ({@code stage/id}), sorted. */
    public List<String> folders() {
        return byPath.keySet().stream()
                .filter(p -> p.contains("/"))
                .map(p -> p.substring(0, p.lastIndexOf('/')))
                .distinct()
                .toList();
    }

    /** Paths of all DRL files, sorted. */
    public List<String> rules() {
        return byPath.keySet().stream().filter(p -> p.endsWith("/" + DRL)).toList();
    }

    /** SHA-256 over the paths and the hashes of all files. */
    public String hash() {
        StringBuilder all = new StringBuilder();
        byPath.forEach((path, bytes) ->
                all.append(path).append(' ').append(Hash.of(bytes)).append('\n'));
        return Hash.of(all.toString());
    }

    RuleFiles with(Map<String, byte[]> changed) {
        Map<String, byte[]> merged = new TreeMap<>(byPath);
        merged.putAll(changed);
        return new RuleFiles(merged);
    }
}
