package dev.fairlead.rules.catalogue;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fairlead.base.StrictJson;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays a user's changes over a whole rulebase. */
public final class Overlay {
    private Overlay() {}

    /** The files of {@code base} with the changes of {@code over}; thresholds.json is read apart. */
    public static RuleFiles lay(RuleFiles over, RuleFiles base) {
        Map<String, String> changed = new LinkedHashMap<>(base.texts());
        List<String> problems = new ArrayList<>();
        over.texts().forEach((path, text) -> {
            String old = base.text(path);
            boolean lost = path.endsWith("/" + RuleFiles.TEXTS)
                    && over.text(path.replace(RuleFiles.TEXTS, RuleFiles.DRL)) == null;
            if (path.equals(RuleFiles.THRESHOLDS)) {
                return;
            }
            if (old == null && lost) {
                problems.add(path + ": there is no such criterion");
            } else if (old == null || path.equals(RuleFiles.CLINIC) || path.endsWith("/" + RuleFiles.DRL)) {
                changed.put(path, text);
            } else {
                changed.put(path, merged(path, text, old, problems));
            }
        });
        if (over.texts().isEmpty()) {
            problems.add("the folder holds neither " + RuleFiles.RULEBASE + " nor " + RuleFiles.THRESHOLDS + " nor "
                    + RuleFiles.CLINIC + " nor a criterion");
        }
        RulebaseException.throwIfAny(problems);
        return new RuleFiles(changed);
    }

    private static String merged(String path, String patch, String old, List<String> problems) {
        TypeReference<JsonNode> tree = new TypeReference<>() {};
        JsonNode from = StrictJson.read(path, patch, tree, problems);
        JsonNode to = StrictJson.read(path, old, tree, problems);
        if (from == null || to == null) {
            return "";
        }
        // a threshold is set in thresholds.json, where it is held to its range: a patch could move the range itself
        from.path("thresholds").fieldNames().forEachRemaining(name -> {
            if (to.path("thresholds").has(name)) {
                problems.add(path + ": thresholds: set " + name + " in " + RuleFiles.THRESHOLDS);
            }
        });
        return StrictJson.merge(to, from).toPrettyString();
    }
}
