package dev.fairlead.rules.verdict;

import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.language.ExampleFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** One example of a criterion: a patch on the base facts, and every result that is not a pass. */
public record Example(Criterion criterion, String name, Map<String, String> set, Map<String, String> expects) {
    /** Path of the examples of a criterion below the rulebase. */
    static String file(Criterion criterion) {
        return criterion.folder() + "/" + RuleFiles.EXAMPLES;
    }

    /** What differs from what is expected, one line each; empty when nothing does. */
    public List<String> differences(Judge judge, ExampleFacts base) {
        Judgement judgement;
        try {
            judgement = judge.judge(base.with(set).all());
        } catch (IllegalArgumentException e) {
            return List.of(file(criterion) + ": " + e.getMessage());
        }
        List<String> differences = new ArrayList<>();
        judgement.errors().forEach(e -> differences.add(e.criterion() + ": own error: " + e.message()));
        Map<String, String> found = found(judgement);
        TreeSet<String> ids = new TreeSet<>(found.keySet());
        ids.addAll(expects.keySet());
        for (String id : ids) {
            String expected = expects.getOrDefault(id, "pass");
            String actual = found.getOrDefault(id, "pass");
            if (!canonical(expected).equals(canonical(actual))) {
                differences.add(id + ": expected " + expected + ", found " + actual);
            }
        }
        return differences;
    }

    /** Every result that is not a pass, in the words of examples. */
    public static Map<String, String> found(Judgement judgement) {
        Map<String, String> found = new TreeMap<>();
        for (CriterionResult r : judgement.results()) {
            if (r.status() != Status.PASS) {
                found.put(r.criterion().id(), word(r));
            }
        }
        return found;
    }

    private static String word(CriterionResult r) {
        return r.ending().warns()
                ? (r.ending() == Ending.STOP ? "stop:" : "caution:") + String.join(",", r.reasons())
                : r.status().word();
    }

    /** Reasons in any order are the same reasons. */
    private static String canonical(String word) {
        int colon = word.indexOf(':');
        return colon < 0
                ? word
                : word.substring(0, colon)
                        + new TreeSet<>(List.of(word.substring(colon + 1).split(",")));
    }
}
