package dev.fairlead.rules.engine;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
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

    /** What the build has left. */
    public static BuiltIn onClassPath() {
        List<CompiledRules> rules = new ArrayList<>();
        String[] lines = resource(INDEX).split("\n");
        for (int i = 1; i < lines.length; i++) {
            String[] words = lines[i].split(" ");
            rules.add(new CompiledRules(words[0], words[1], Integer.parseInt(words[2]), Map.of()));
        }
        return new BuiltIn(lines[0], rules);
    }

    /** The files that the program judges by: those that lie beside it, or those that it was compiled from. */
    public static RuleFiles files() {
        Path source = source();
        return source != null ? RuleFiles.of(source) : packed(FILES);
    }

    /** The examples of these, with the facts that they start from. */
    public static RuleFiles examples() {
        Path source = source();
        return source != null ? RuleFiles.examples(source) : packed(TRIES);
    }

    /** What the build has packed under that name. */
    public static RuleFiles packed(String name) {
        return new RuleFiles(RuleFiles.json(name, resource(name), new TypeReference<>() {}));
    }

    /** A text that the build put beside the rules. */
    private static String resource(String name) {
        try (InputStream in = BuiltIn.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new RulebaseException(
                        List.of("this program holds no compiled rulebase: " + name + " is missing"));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    /**
     * The {@code rules} folder that this program was built from, where it still stands beside {@code target}; null for
     * a program that was put elsewhere.
     */
    private static @Nullable Path source() {
        try {
            Path program = Path.of(BuiltIn.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            Path rules = program.resolveSibling("../rules").normalize();
            return Files.exists(rules.resolve(RuleFiles.RULEBASE)) ? rules : null;
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
