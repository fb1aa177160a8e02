package dev.fairlead.rules.engine;

import dev.fairlead.rules.catalogue.RulebaseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/** Compiles DRL files, one package each, into classes of an executable model. */
public final class DrlCompiler {
    private static final Pattern PACKAGE = Pattern.compile("(?m)^\\s*package\\s+([\\w.]+)\\s*;?");
    private static final Pattern RULE = Pattern.compile("(?m)^\\s*rule\\s+\"");

    private DrlCompiler() {}

    /** Compiles all files (path to text) in one pass; throws with every fault, by file and line. */
    public static List<CompiledRules> compile(Map<String, String> drl) {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        Map<String, String> pathOfFolder = new LinkedHashMap<>();
        List<String> problems = new ArrayList<>();
        drl.forEach((path, text) -> {
            String folder = packageOf(path, text, problems).replace('.', '/') + "/";
            String other = pathOfFolder.put(folder, path);
            if (other != null) {
                problems.add(path + ": has the package of " + other);
            }
            files.write("src/main/resources/" + folder + "criterion.drl", text);
        });
        if (!problems.isEmpty()) {
            throw new RulebaseException(problems);
        }
        KieBuilder builder = services.newKieBuilder(files);
        builder.buildAll(ExecutableModelProject.class);
        for (Message m : builder.getResults().getMessages(Message.Level.ERROR)) {
            problems.add(fault(m, pathOfFolder));
        }
        if (!problems.isEmpty()) {
            throw new RulebaseException(problems);
        }
        return byFile((InternalKieModule) builder.getKieModule(), pathOfFolder, drl);
    }

    private static List<CompiledRules> byFile(
            InternalKieModule module, Map<String, String> pathOfFolder, Map<String, String> drl) {
        Map<String, Map<String, byte[]>> classes = new LinkedHashMap<>();
        drl.keySet().forEach(path -> classes.put(path, new LinkedHashMap<>()));
        for (String name : module.getFileNames()) {
            if (name.endsWith(".class")) {
                pathOfFolder.forEach((folder, path) -> {
                    if (name.startsWith(folder)) {
                        classes.get(path).put(name, module.getBytes(name));
                    }
                });
            }
        }
        List<CompiledRules> compiled = new ArrayList<>();
        classes.forEach((path, found) -> compiled.add(
                new CompiledRules(path, CacheKey.of(path, drl.get(path)), ruleCount(drl.get(path)), found)));
        return compiled;
    }

    private static String packageOf(String path, String text, List<String> problems) {
        Matcher m = PACKAGE.matcher(text);
        if (m.find()) {
            return m.group(1);
        }
        problems.add(path + ":1: a package is missing");
        return "";
    }

    /** How many rules the text holds. */
    public static int ruleCount(String text) {
        return (int) RULE.matcher(text).results().count();
    }

    /**
     * The engine names the file by its package folder, or names a class that it made of it; people know it by its path
     * in the rulebase.
     */
    private static String fault(Message m, Map<String, String> pathOfFolder) {
        String at = m.getPath() == null ? "" : m.getPath().replaceFirst("src/main/(resources|java)/", "");
        String path = pathOfFolder.entrySet().stream()
                .filter(e -> at.startsWith(e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(at);
        String line = at.endsWith(".drl") && m.getLine() > 0 ? ":" + m.getLine() : "";
        return path + line + ": " + m.getText().strip().lines().findFirst().orElse("it does not compile");
    }
}
