package dev.fairlead.rules.engine;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.catalogue.StrictJson;
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

/**
 * The rulebase that was compiled in the build and lies on the class path beside its classes.
 *
 * @param hash of the texts, as {@link RuleFiles#hash()} gives it
 * @param texts every file of the rulebase by path
 * @param models path of each DRL file to the class that holds its rules
 * @param rules number of rules in each DRL file
 */
public record BuiltIn(String hash, Map<String, String> texts, Map<String, String> models, Map<String, Integer> rules) {
    static final String INDEX = "dev/fairlead/rulebase/index.json";

    /** Null when the build left none. */
    public static BuiltIn onClassPath() {
        try (InputStream in = BuiltIn.class.getClassLoader().getResourceAsStream(INDEX)) {
            if (in == null) {
                return null;
            }
            List<String> problems = new ArrayList<>();
            BuiltIn read = StrictJson.read(
                    INDEX,
                    new String(in.readAllBytes(), StandardCharsets.UTF_8),
                    new TypeReference<BuiltIn>() {},
                    problems);
            if (read == null) {
                throw new RulebaseException(problems);
            }
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + INDEX, e);
        }
    }

    public RuleFiles files() {
        return RuleFiles.of(texts);
    }

    /**
     * The {@code rules} folder that this program was built from, where it still stands beside {@code target}; null for
     * a program that was put elsewhere.
     */
    public static Path source() {
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
