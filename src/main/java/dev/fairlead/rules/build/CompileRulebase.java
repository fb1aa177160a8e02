package dev.fairlead.rules.build;

import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.rules.BuiltIn;
import dev.fairlead.rules.PlainRule;
import dev.fairlead.rules.Preparation;
import dev.fairlead.rules.RuleFiles;
import dev.fairlead.rules.RulebaseCheck;
import dev.fairlead.rules.RulebaseException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Compiles the rulebase in the build: {@code CompileRulebase RULES CLASSES}. Every file goes through the engine's own
 * compiler, so that what is not DRL, or does not fit the facts, stops the build. Rules that are plain are then kept as
 * data, others as the classes made of them.
 */
public final class CompileRulebase {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Path classes;
    private final RuleFiles files;

    private CompileRulebase(Path rules, Path classes) {
        this.classes = classes;
        this.files = RuleFiles.of(rules);
    }

    public static void main(String[] args) throws IOException {
        try {
            new CompileRulebase(Path.of(args[0]), Path.of(args[1])).run();
        } catch (RulebaseException e) {
            // the build prints the message of what it fails on
            throw new IllegalStateException("the rulebase cannot be compiled:\n" + e.getMessage(), e);
        }
    }

    private void run() throws IOException {
        Path cache = classes.resolveSibling("rule-cache");
        Map<String, Class<? extends CaseFact>> about = new HashMap<>();
        RulebaseCheck.check(files).criteria().forEach(c -> about.put(c.folder() + "/" + RuleFiles.DRL, c.about()));
        Map<String, String> texts = new TreeMap<>();
        files.rules().forEach(path -> texts.put(path, files.text(path)));
        List<CompiledRules> compiled = new RuleCache(cache).compile(texts);
        removeOld();
        Map<String, BuiltIn.Entry> entries = new TreeMap<>();
        for (CompiledRules c : compiled) {
            List<PlainRule> plain = PlainRule.in(texts.get(c.path()), about.get(c.path()));
            if (!plain.isEmpty() && plain.size() != c.rules()) {
                throw new IllegalStateException(
                        c.path() + ": " + c.rules() + " rules, of which " + plain.size() + " were read");
            }
            entries.put(c.path(), new BuiltIn.Entry(c.rules(), plain, plain.isEmpty() ? c.modelClass() : ""));
            for (Map.Entry<String, byte[]> file :
                    plain.isEmpty() ? c.classes().entrySet() : Set.<Map.Entry<String, byte[]>>of()) {
                write(file.getKey(), file.getValue());
            }
        }
        write(BuiltIn.TEXTS, BuiltIn.inOnePiece(files));
        BuiltIn index = BuiltIn.of(files, entries);
        write(BuiltIn.INDEX, JSON.writeValueAsBytes(index));
        write(BuiltIn.PREPARED, Preparation.of(files, index, cache));
    }

    /** Takes away everything of the build before, so that the jar holds nothing else. */
    private void removeOld() throws IOException {
        Path folder = classes.resolve(BuiltIn.FOLDER);
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private void write(String path, byte[] bytes) throws IOException {
        Path file = classes.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
