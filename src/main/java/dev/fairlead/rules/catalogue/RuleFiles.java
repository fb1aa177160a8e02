package dev.fairlead.rules.catalogue;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fairlead.base.Hash;
import dev.fairlead.base.StrictJson;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The files of a rulebase, wherever they come from.
 *
 * @param texts by path below the folder, sorted
 */
public record RuleFiles(Map<String, String> texts) {
    public static final String RULEBASE = "rulebase.json";
    public static final String SOURCES = "sources.json";
    public static final String THRESHOLDS = "thresholds.json";
    /** What a clinic's own cases have shown. */
    public static final String CLINIC = "clinic.json";

    public static final String DRL = "criterion.drl";
    public static final String TEXTS = "criterion.json";
    /** In the folder of each criterion. */
    public static final String EXAMPLES = "examples.json";
    /** The facts that examples start from, beside the criteria. */
    public static final String BASE = "base-facts.json";

    private static final Pattern BELONGS =
            Pattern.compile("(rulebase|sources|thresholds|clinic)\\.json|.+/criterion\\.(drl|json)");

    private static final Pattern TRIES = Pattern.compile("base-facts\\.json|.+/examples\\.json");

    /** A rulebase is small; anything larger than this is a slip of the folder. */
    private static final int MOST_FILES = 5000;

    public RuleFiles {
        texts = Collections.unmodifiableMap(new TreeMap<>(texts));
    }

    /** Reads the files that make a rulebase from a folder; examples and anything else are left alone. */
    public static RuleFiles of(Path folder) {
        return read(folder, BELONGS);
    }

    /** Reads what a rulebase is tried by, from a folder: no verdict depends on it, nor does any hash. */
    public static RuleFiles examples(Path folder) {
        return read(folder, TRIES);
    }

    private static RuleFiles read(Path folder, Pattern wanted) {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder, 3)) {
            for (Path file : walk.filter(Files::isRegularFile).limit(MOST_FILES).toList()) {
                String path = folder.relativize(file).toString().replace('\\', '/');
                if (wanted.matcher(path).matches()) {
                    found.put(path, new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the rulebase in " + folder + ": " + e.getMessage(), e);
        }
        return new RuleFiles(found);
    }

    /** What a file of JSON says; throws what is wrong with it. */
    public static <T> T json(String file, String text, TypeReference<T> type) {
        List<String> problems = new ArrayList<>();
        T read = StrictJson.read(file, text, type, problems);
        RulebaseException.throwIfAny(problems);
        return Objects.requireNonNull(read, file);
    }

    /** The same of one of these files; {@code otherwise} where it is not there. */
    public <T> T json(String path, TypeReference<T> type, T otherwise) {
        String text = text(path);
        return text == null ? otherwise : json(path, text, type);
    }

    /** The text of a file, or null when it is not there. */
    public @Nullable String text(String path) {
        return texts.get(path);
    }

    /** Folders of criteria ({@code stage/id}), sorted. */
    public List<String> folders() {
        return texts.keySet().stream()
                .filter(p -> p.contains("/"))
                .map(p -> p.substring(0, p.lastIndexOf('/')))
                .distinct()
                .toList();
    }

    /** The texts of all DRL files by path, sorted. */
    public Map<String, String> rules() {
        Map<String, String> rules = new TreeMap<>(texts);
        rules.keySet().removeIf(p -> !p.endsWith("/" + DRL));
        return rules;
    }

    /** SHA-256 over the paths and the hashes of all files. */
    public String hash() {
        StringBuilder all = new StringBuilder();
        texts.forEach((path, text) ->
                all.append(path).append(' ').append(Hash.of(text)).append('\n'));
        return Hash.of(all.toString());
    }

    /** The files of {@code base} with a user's changes, which these are; thresholds.json is read apart. */
    public RuleFiles over(RuleFiles base) {
        Map<String, String> changed = new TreeMap<>(base.texts);
        List<String> problems = new ArrayList<>();
        texts.forEach((path, text) -> {
            String old = base.text(path);
            boolean lost = path.endsWith("/" + TEXTS) && text(path.replace(TEXTS, DRL)) == null;
            if (path.equals(THRESHOLDS)) {
                return;
            }
            if (old == null && lost) {
                problems.add(path + ": there is no such criterion");
            } else if (old == null || path.equals(CLINIC) || path.endsWith("/" + DRL)) {
                changed.put(path, text);
            } else {
                changed.put(path, merged(path, text, old, problems));
            }
        });
        if (texts.isEmpty()) {
            problems.add("the folder holds neither " + RULEBASE + " nor " + THRESHOLDS + " nor " + CLINIC
                    + " nor a criterion");
        }
        RulebaseException.throwIfAny(problems);
        return new RuleFiles(changed);
    }

    private static String merged(String path, String patch, String old, List<String> problems) {
        TypeReference<JsonNode> tree = new TypeReference<>() {};
        JsonNode from = StrictJson.read(path, patch, tree, problems);
        JsonNode to = StrictJson.read(path, old, tree, problems);
        if (from == null || to == null) {
            return "";
        }
        // a threshold is set in thresholds.json, where it is held to its range: a patch could move the range itself
        from.path("thresholds").fieldNames().forEachRemaining(name -> {
            if (to.path("thresholds").has(name)) {
                problems.add(path + ": thresholds: set " + name + " in " + THRESHOLDS);
            }
        });
        return StrictJson.merge(to, from).toPrettyString();
    }
}
