package dev.fairlead.rules.engine;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.rules.catalogue.RuleFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The rulebase that was compiled in the build and lies on the class path beside its classes.
 *
 * @param hash of the texts, as {@link RuleFiles#hash()} gives it
 */
public record BuiltIn(String hash, List<CompiledRules> rules) {
    /** Where the build puts it. */
    public static final String FOLDER = "dev/fairlead/rulebase/";
    /**
     * What the engine starts from, in lines, so that it need not wait for a reader of JSON: hash; key, model, rules.
     */
    public static final String INDEX = "index.txt";
    /** Every file as it was, by path. */
    public static final String FILES = "files.json";
    /** The same of the files that the rulebase is tried by, which no check reads. */
    public static final String TRIES = "tries.json";

    /** Null when the build left none. */
    public static @Nullable BuiltIn onClassPath() {
        String index = resource(INDEX);
        if (index == null) {
            return null;
        }
        List<CompiledRules> rules = new ArrayList<>();
        String[] lines = index.split("\n");
        for (int i = 1; i < lines.length; i++) {
            String[] words = lines[i].split(" ");
            rules.add(new CompiledRules(words[0], words[1], Integer.parseInt(words[2]), Map.of()));
        }
        return new BuiltIn(lines[0], rules);
    }

    /** The texts that it was compiled from. */
    public RuleFiles files() {
        return packed(FILES);
    }

    /** The examples that the build ran by, with the facts that they start from. */
    public static RuleFiles examples() {
        return packed(TRIES);
    }

    private static RuleFiles packed(String name) {
        String texts = Objects.requireNonNull(resource(name), name);
        return new RuleFiles(RuleFiles.json(name, texts, new TypeReference<>() {}));
    }

    /** A text that the build put beside the rules; null when it is not there. */
    private static @Nullable String resource(String name) {
        try (InputStream in = BuiltIn.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
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
