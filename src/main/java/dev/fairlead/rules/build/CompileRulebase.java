package dev.fairlead.rules.build;

import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.rules.BuiltIn;
import dev.fairlead.rules.Hash;
import dev.fairlead.rules.RuleFiles;
import dev.fairlead.rules.RulebaseCheck;
import dev.fairlead.rules.RulebaseException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Compiles the rulebase in the build: {@code CompileRulebase RULES CLASSES}. Only what changed since the last build is compiled again. */
public final class CompileRulebase {
    private static final JsonMapper JSON = JsonMapper.builder().enable(com.fasterxml.jackson.databind.SerializationFeature.INDENT_OUTPUT).build();

    private final Path classes;
    private final RuleFiles files;
    private final Map<String, BuiltIn.Entry> before;

    private CompileRulebase(Path rules, Path classes) throws IOException {
        this.classes = classes;
        this.files = RuleFiles.of(rules);
        Path index = classes.resolve(BuiltIn.INDEX);
        this.before = Files.exists(index) ? JSON.readValue(index.toFile(), BuiltIn.class).rules() : Map.of();
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
        RulebaseCheck.check(files);
        Map<String, BuiltIn.Entry> entries = new TreeMap<>();
        Map<String, String> changed = new LinkedHashMap<>();
        for (String path : files.rules()) {
            BuiltIn.Entry known = before.get(path);
            if (known != null && known.key().equals(CacheKey.of(path, files.text(path))) && present(known)) {
                entries.put(path, known);
            } else {
                changed.put(path, files.text(path));
            }
        }
        List<CompiledRules> compiled = changed.isEmpty() ? List.of() : DrlCompiler.compile(changed);
        for (CompiledRules c : compiled) {
            entries.put(c.path(), new BuiltIn.Entry(c.key(), c.rules(), c.modelClass(), List.copyOf(c.classes().keySet())));
        }
        removeOld(entries);
        for (CompiledRules c : compiled) {
            for (Map.Entry<String, byte[]> file : c.classes().entrySet()) {
                write(file.getKey(), file.getValue());
            }
        }
        Map<String, String> hashes = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : files.all().entrySet()) {
            hashes.put(file.getKey(), Hash.of(file.getValue()));
            write(BuiltIn.FOLDER + "files/" + file.getKey(), file.getValue());
        }
        write(BuiltIn.INDEX, JSON.writeValueAsBytes(new BuiltIn(hashes, entries)));
    }

    private boolean present(BuiltIn.Entry entry) {
        return entry.classes().stream().allMatch(c -> Files.exists(classes.resolve(c)));
    }

    /** Takes away classes and texts of rules that changed or went, so that the jar holds nothing else. */
    private void removeOld(Map<String, BuiltIn.Entry> entries) throws IOException {
        for (Map.Entry<String, BuiltIn.Entry> old : before.entrySet()) {
            if (!old.getValue().equals(entries.get(old.getKey()))) {
                for (String file : old.getValue().classes()) {
                    Files.deleteIfExists(classes.resolve(file));
                }
            }
            if (!entries.containsKey(old.getKey())) {
                Files.deleteIfExists(classes.resolve(BuiltIn.FOLDER + "files/" + old.getKey()));
                Files.deleteIfExists(classes.resolve(BuiltIn.FOLDER + "files/" + old.getKey().replace(RuleFiles.DRL, RuleFiles.TEXTS)));
            }
        }
    }

    private void write(String path, byte[] bytes) throws IOException {
        Path file = classes.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
