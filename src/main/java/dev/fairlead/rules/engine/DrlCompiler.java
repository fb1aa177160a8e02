package dev.fairlead.rules.engine;

import dev.fairlead.rules.catalogue.RulebaseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/** Compiles DRL files into classes of an executable model: one for each package, which is a stage of care. */
public final class DrlCompiler {
    private static final Pattern PACKAGE = Pattern.compile("(?m)^\\s*package\\s+([\\w.]+)\\s*;?");
    private static final String SOURCES = "src/main/resources/";

    private DrlCompiler() {}

    /** Texts by path, by the package that they name; throws where one names none. */
    static Map<String, Map<String, String>> byPackage(Map<String, String> drl) {
        Map<String, Map<String, String>> packages = new TreeMap<>();
        List<String> problems = new ArrayList<>();
        drl.forEach((path, text) -> {
            Matcher m = PACKAGE.matcher(text);
            if (m.find()) {
                packages.computeIfAbsent(m.group(1), p -> new TreeMap<>()).put(path, text);
            } else {
                problems.add(path + ":1: a package is missing");
            }
        });
        RulebaseException.throwIfAny(problems);
        return packages;
    }

    /** Compiles all files (path to text) in one pass; throws with every fault, by file and line. */
    public static List<CompiledRules> compile(Map<String, String> drl) {
        Map<String, Map<String, String>> packages = byPackage(drl);
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        // the engine wants a file in the folder of its package
        packages.forEach((name, texts) -> texts.forEach(
                (path, text) -> files.write(SOURCES + name.replace('.', '/') + "/" + path.replace('/', '.'), text)));
        KieBuilder builder = services.newKieBuilder(files);
        builder.buildAll(ExecutableModelProject.class);
        List<Message> faults = builder.getResults().getMessages(Message.Level.ERROR);
        if (!faults.isEmpty()) {
            throw new RulebaseException(problems(faults, drl));
        }
        InternalKieModule module = (InternalKieModule) builder.getKieModule();
        List<CompiledRules> compiled = new ArrayList<>();
        packages.forEach((name, texts) -> {
            Map<String, byte[]> classes = new TreeMap<>();
            for (String file : module.getFileNames()) {
                if (file.endsWith(".class") && file.startsWith(name.replace('.', '/') + "/")) {
                    classes.put(file, module.getBytes(file));
                }
            }
            compiled.add(CompiledRules.of(texts, classes));
        });
        return compiled;
    }

    /**
     * The engine tells some faults of a class that it made of a whole package: which of several files is meant shows
     * when each is compiled alone.
     */
    private static List<String> problems(List<Message> faults, Map<String, String> drl) {
        List<String> problems = new ArrayList<>();
        for (Map.Entry<String, String> file : drl.entrySet()) {
            if (drl.size() > 1) {
                try {
                    compile(Map.ofEntries(file));
                } catch (RulebaseException e) {
                    problems.addAll(e.problems());
                }
            } else {
                for (Message m : faults) {
                    boolean told = m.getPath() != null && m.getPath().endsWith(".drl") && m.getLine() > 0;
                    problems.add(file.getKey() + (told ? ":" + m.getLine() : "") + ": "
                            + m.getText().strip().lines().findFirst().orElse("it does not compile"));
                }
            }
        }
        return problems.isEmpty() ? faults.stream().map(Message::getText).toList() : problems;
    }
}
