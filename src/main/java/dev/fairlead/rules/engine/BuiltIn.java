package dev.fairlead.rules.engine;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.rules.catalogue.CatalogueFile;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.catalogue.StrictJson;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The rulebase that was compiled in the build and lies on the class path beside its classes.
 *
 * @param hash of the texts, as {@link RuleFiles#hash()} gives it
 * @param models classes that hold the rules of one package each, by the key of what they were compiled from
 * @param rules number of rules in each, by the same key
 */
public record BuiltIn(String hash, Map<String, String> models, Map<String, Integer> rules) {
    static final String FOLDER = "dev/fairlead/rulebase/";
    /** What the engine starts from: a line each, so that it need not wait for a reader of JSON. */
    static final String INDEX = "index.properties";
    /** All that is not DRL, in one. */
    static final String TEXTS = "texts.json";
    /** Every file as it was, by path: for those who lay their own over them. */
    static final String FILES = "files.json";

    private static final String HASH = "hash";
    private static final String MODEL = "model.";
    private static final String RULES = "rules.";

    /** Null when the build left none. */
    public static @Nullable BuiltIn onClassPath() {
        String text = resource(INDEX);
        if (text == null) {
            return null;
        }
        Map<String, String> models = new TreeMap<>();
        Map<String, Integer> rules = new TreeMap<>();
        Properties read = new Properties();
        try {
            read.load(new StringReader(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (String name : read.stringPropertyNames()) {
            if (name.startsWith(MODEL)) {
                models.put(name.substring(MODEL.length()), read.getProperty(name));
            } else if (name.startsWith(RULES)) {
                rules.put(name.substring(RULES.length()), Integer.valueOf(read.getProperty(name)));
            }
        }
        return new BuiltIn(read.getProperty(HASH), models, rules);
    }

    /** What {@link #onClassPath()} reads. */
    String index() {
        StringBuilder lines = new StringBuilder(HASH + "=" + hash + "\n");
        models.forEach((key, name) -> lines.append(MODEL + key + "=" + name + "\n"));
        rules.forEach((key, n) -> lines.append(RULES + key + "=" + n + "\n"));
        return lines.toString();
    }

    private static <T> T read(String name, TypeReference<T> type) {
        List<String> problems = new ArrayList<>();
        String text = Objects.requireNonNull(resource(name), name);
        T read = StrictJson.read(name, text, type, problems);
        if (read == null || !problems.isEmpty()) {
            throw new RulebaseException(problems);
        }
        return read;
    }

    /** A text that the build put beside the rules; null when it is not there. */
    public static @Nullable String resource(String name) {
        try (InputStream in = BuiltIn.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    /** What the catalogue is made of. */
    public CatalogueFile texts() {
        return read(TEXTS, new TypeReference<CatalogueFile>() {});
    }

    public RuleFiles files() {
        return RuleFiles.of(read(FILES, new TypeReference<Map<String, String>>() {}));
    }

    /**
     * The {@code rules} folder that this program was built from, where it still stands beside {@code target}; null for
     * a program that was put elsewhere.
     */
    public static @Nullable Path source() {
        try {
            Path program = Path.of(BuiltIn.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            Path target = program.getParent();
            Path rules = target == null || target.getParent() == null ? null : target.resolveSibling("rules");
            return rules != null && Files.exists(rules.resolve(RuleFiles.RULEBASE)) ? rules : null;
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
