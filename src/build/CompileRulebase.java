import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.engine.CompiledRules;
import dev.fairlead.rules.engine.RuleCache;
import dev.fairlead.rules.language.RulebaseCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Compiles the rulebase in the build, by the same code that compiles an edited one at run time: {@code CompileRulebase
 * RULES CLASSES}. What is not DRL, or does not fit the facts, stops the build.
 */
final class CompileRulebase {
    private CompileRulebase() {}

    public static void main(String[] args) throws IOException {
        try {
            compile(Path.of(args[0]), Path.of(args[1]));
        } catch (RulebaseException e) {
            System.err.println("The rulebase cannot be compiled:\n" + e.getMessage());
            System.exit(1);
        }
    }

    private static void compile(Path source, Path classes) throws IOException {
        RuleFiles files = RuleFiles.of(source);
        RulebaseCheck.check(files);
        Path folder = classes.resolve(BuiltIn.FOLDER);
        removeOld(folder);
        StringBuilder index = new StringBuilder(files.hash()).append('\n');
        for (CompiledRules c : new RuleCache(classes.resolveSibling("rule-cache")).compile(files.rules(), List.of())) {
            index.append(c.key() + " " + c.model() + " " + c.rules() + "\n");
            for (Map.Entry<String, byte[]> file : c.classes().entrySet()) {
                Path path = classes.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue());
            }
        }
        Files.writeString(folder.resolve(BuiltIn.INDEX), index);
        Files.write(folder.resolve(BuiltIn.FILES), new JsonMapper().writeValueAsBytes(files.texts()));
        Files.write(
                folder.resolve(BuiltIn.TRIES),
                new JsonMapper().writeValueAsBytes(RuleFiles.examples(source).texts()));
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
}
