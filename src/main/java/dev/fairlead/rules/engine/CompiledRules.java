package dev.fairlead.rules.engine;

import dev.fairlead.base.Hash;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.language.Verdicts;
import java.lang.reflect.Method;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.model.codegen.ExecutableModelProject;

/**
 * The rules of one package, compiled.
 *
 * @param key hash of all that the classes depend on
 * @param model name of the class that holds the rules as a model of the engine
 * @param rules number of rules in the files
 * @param classes class files by path in a class folder; none where they lie on the class path
 */
public record CompiledRules(String key, String model, int rules, Map<String, byte[]> classes) {
    private static final Pattern MODEL = Pattern.compile("(.*/Rules[0-9A-F]{32})\\.class");
    private static final Pattern RULE = Pattern.compile("(?m)^\\s*rule\\s+\"");

    /** What was made of the files of one package, path to text. */
    static CompiledRules of(Map<String, String> drl, Map<String, byte[]> classes) {
        String model = classes.keySet().stream()
                .map(MODEL::matcher)
                .filter(m -> m.matches())
                .map(m -> m.group(1).replace('/', '.'))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the engine made no model"));
        long rules = drl.values().stream()
                .mapToLong(text -> RULE.matcher(text).results().count())
                .sum();
        return new CompiledRules(key(drl), model, (int) rules, classes);
    }

    /** Of the files of one package: their text, what rules can call, the engine. */
    static String key(Map<String, String> drl) {
        return Hash.of(Callable.HASH + "\n" + new TreeMap<>(drl));
    }

    /** What rules are compiled against: classes kept from another version of it would fail when they run. */
    private static final class Callable {
        static final String HASH =
                Hash.of(ExecutableModelProject.class.getPackage().getImplementationVersion() + "\n"
                        + Stream.of(
                                        Stream.of(CaseFact.class.getPermittedSubclasses()),
                                        Stream.of(Measured.class, Answer.class, Fact.class, Limit.class),
                                        Stream.of(Limits.class, Verdicts.class, Verdict.class))
                                .flatMap(types -> types)
                                .flatMap(type -> Stream.of(type.getMethods()))
                                .map(Method::toString)
                                .sorted()
                                .collect(Collectors.joining("\n")));
    }
}
