package dev.fairlead.rules.engine;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Hash;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.language.Verdicts;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drools.model.codegen.ExecutableModelProject;

/** Hash of everything that the classes of a DRL file depend on: its text, what rules can call, the engine. */
final class CacheKey {
    private static final String PROGRAM = program();

    private CacheKey() {}

    /** Of the files of one package, path to text. */
    static String of(Map<String, String> drl) {
        return Hash.of(PROGRAM + "\n" + new TreeMap<>(drl));
    }

    /**
     * The signatures that rules are compiled against: classes kept from another version of them would fail when they
     * run.
     */
    private static String program() {
        StringBuilder all = new StringBuilder(
                "engine " + ExecutableModelProject.class.getPackage().getImplementationVersion() + " program "
                        + CacheKey.class.getPackage().getImplementationVersion() + "\n");
        for (Class<?> type : CaseFact.class.getPermittedSubclasses()) {
            all.append(type.getName());
            for (RecordComponent c : type.getRecordComponents()) {
                all.append(' ').append(c.getType().getName()).append(' ').append(c.getName());
            }
            all.append('\n');
        }
        for (Class<?> type : List.of(
                Measured.class, Answer.class, Fact.class, Limit.class, Limits.class, Verdicts.class, Verdict.class)) {
            Arrays.stream(type.getMethods())
                    .map(Method::toString)
                    .sorted()
                    .forEach(m -> all.append(m).append('\n'));
        }
        return Hash.of(all.toString());
    }
}
