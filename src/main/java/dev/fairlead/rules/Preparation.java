package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.build.RuleCache;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes the built-in rulebase ready in the build: what a start would have to read, and what the engine would be asked.
 */
public final class Preparation {
    private Preparation() {}

    /**
     * What {@link Prepared} reads, of checked texts and what was compiled of them; {@code cache} holds the classes of
     * rules that are not plain.
     */
    public static byte[] of(RuleFiles files, BuiltIn index, Path cache) throws IOException {
        return prepared(files, index, cache).bytes();
    }

    static Prepared prepared(RuleFiles files, BuiltIn index, Path cache) throws IOException {
        Rulebase rulebase = new RulebaseLoader(new RuleCache(cache))
                .load(files, Map.of(), new RulebaseLoader.Packaged(index, files));
        List<Criterion> criteria = rulebase.catalogue().criteria();
        Map<String, List<Term>> terms = new HashMap<>();
        criteria.forEach(c -> terms.put(c.id(), rulebase.terms(c.id())));
        Known known = new Known(rulebase.catalogue(), rulebase.limits(), terms, Map.of());
        Combinations combinations = new Combinations(rulebase.limits());
        for (Criterion c : criteria) {
            List<PlainRule> rules =
                    index.rules().get(c.folder() + "/" + RuleFiles.DRL).plain();
            for (CaseFact fact : rules.isEmpty() ? List.<CaseFact>of() : combinations.of(c, terms.get(c.id()), rules)) {
                known.keep(rulebase.judge().byEngine(List.of(fact), Stage.HOLDING));
            }
        }
        Map<String, byte[]> decided = new HashMap<>();
        for (int i = 0; i < criteria.size(); i++) {
            decided.put(criteria.get(i).id(), Decided.bytes(known.kept(i)));
        }
        return new Prepared(rulebase.hash(), rulebase.ruleCount(), rulebase.catalogue(), terms, decided);
    }
}
