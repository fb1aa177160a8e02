package dev.fairlead.rules.engine;

import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.language.RulebaseCheck;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Compiles the rulebase in the build, by the same code that compiles an edited one at run time: {@code CompileRulebase
 * RULES CLASSES}. What is not DRL, or does not fit the facts, stops the build.
 */
public final class CompileRulebase {
    private CompileRulebase() {}

    public static void main(String[] args) throws IOException {
        try {
            compile(RuleFiles.of(Path.of(args[0])), Path.of(args[1]));
            // for examples alone: no verdict depends on it
            Path base = Path.of(args[0], ExampleFacts.BASE);
            write(Path.of(args[1], BuiltIn.FOLDER, ExampleFacts.BASE), Files.readAllBytes(base));
        } catch (RulebaseException e) {
            // the build prints the message of what it fails on
            throw new IllegalStateException("the rulebase cannot be compiled:\n" + e.getMessage(), e);
        }
    }

    private static void compile(RuleFiles files, Path classes) throws IOException {
        RulebaseCheck.check(files);
        Map<String, String> drl = new TreeMap<>();
        files.rules().forEach(path -> drl.put(path, files.text(path)));
        removeOld(classes.resolve(BuiltIn.FOLDER));
        Map<String, String> models = new TreeMap<>();
        Map<String, Integer> rules = new TreeMap<>();
        for (CompiledRules c : new RuleCache(classes.resolveSibling("rule-cache")).compile(drl)) {
            models.put(c.key(), c.modelClass());
            rules.put(c.key(), c.rules());
            for (Map.Entry<String, byte[]> file : c.classes().entrySet()) {
                write(classes.resolve(file.getKey()), file.getValue());
            }
        }
        Map<String, String> texts = new TreeMap<>();
        files.all().keySet().forEach(path -> texts.put(path, files.text(path)));
        JsonMapper json = new JsonMapper();
        Path folder = classes.resolve(BuiltIn.FOLDER);
        write(
                folder.resolve(BuiltIn.INDEX),
                new BuiltIn(files.hash(), models, rules).index().getBytes(StandardCharsets.UTF_8));
        write(folder.resolve(BuiltIn.TEXTS), json.writeValueAsBytes(CatalogueReader.texts(files)));
        write(folder.resolve(BuiltIn.FILES), json.writeValueAsBytes(texts));
    }

    /** Takes away everything of the build before, so that the jar holds nothing else. */
    private static void removeOld(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
