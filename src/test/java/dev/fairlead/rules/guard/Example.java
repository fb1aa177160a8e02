package dev.fairlead.rules.guard;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.Status;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** One example of a criterion: a patch on the base, and every result that is not a pass. */
public record Example(String criterion, String name, Map<String, String> set, Map<String, String> expects) {
    /** The examples of one criterion's folder. */
    public static List<Example> in(Path folder) {
        List<Example> examples = new ArrayList<>();
        for (JsonNode node : Facts.json(folder.resolve("examples.json"))) {
            node.fieldNames().forEachRemaining(key -> {
                if (!List.of("name", "set", "expects").contains(key)) {
                    throw new IllegalArgumentException(
                            folder + ": an example has a name, a set and what it expects, no " + key);
                }
            });
            examples.add(new Example(
                    folder.getFileName().toString(),
                    node.required("name").asText(),
                    texts(node.required("set")),
                    texts(node.required("expects"))));
        }
        return examples;
    }

    private static Map<String, String> texts(JsonNode node) {
        Map<String, String> texts = new java.util.LinkedHashMap<>();
        node.properties().forEach(p -> texts.put(p.getKey(), p.getValue().asText()));
        return texts;
    }

    /** What differs from what is expected, one line each; empty when nothing does. */
    public List<String> differences(Judge judge, Facts base) {
        Judgement judgement = judge.judge(base.with(set).all());
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
    static Map<String, String> found(Judgement judgement) {
        Map<String, String> found = new TreeMap<>();
        for (CriterionResult r : judgement.results()) {
            if (r.status() != Status.PASS) {
                found.put(r.criterion().id(), word(r));
            }
        }
        return found;
    }

    private static String word(CriterionResult r) {
        return r.status() == Status.WARN
                ? (r.stop() ? "stop:" : "caution:") + String.join(",", r.reasons())
                : r.status().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
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
