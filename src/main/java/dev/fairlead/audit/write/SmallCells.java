package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.run.Recoder;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Leaves small counts of a summary out: a count from 1 to 4 becomes null; where one count of a group alone would go, so
 * that it could be told from the sum, the next smallest goes with it; shares and intervals of such a group go too.
 */
public final class SmallCells {
    /** Lists that tell single cases, or quote what they hold. */
    private static final List<String> SINGLE = List.of(
            "looks",
            "waivers",
            "unreadable",
            "tooLong",
            "failed",
            "earlierStates",
            "errors",
            "lostCells",
            "alikeCodes",
            "agreement",
            "detection");

    private SmallCells() {}

    /** Works on the tree of a summary. */
    public static void leaveOut(ObjectNode summary) {
        SINGLE.forEach(summary::remove);
        JsonNode format = summary.remove("format");
        summary.forEach(SmallCells::walk);
        leaveOutCounts(summary);
        summary.set("format", format);
        summary.put(
                "smallCounts", "counts from 1 to " + (Recoder.FEWEST - 1) + " are left out, and what would tell them");
    }

    private static void walk(JsonNode node) {
        if (node instanceof ArrayNode array) {
            array.forEach(SmallCells::walk);
        } else if (node instanceof ObjectNode o) {
            // counts in a row, such as those of a histogram
            o.remove(o.properties().stream()
                    .filter(p -> p.getValue().isArray() && p.getValue().path(0).isIntegralNumber())
                    .map(Map.Entry::getKey)
                    .toList());
            o.forEach(SmallCells::walk);
            if (leaveOutCounts(o)) {
                // what is made of the counts would tell them
                o.remove(o.properties().stream()
                        .filter(p -> p.getValue().isDouble() || p.getValue().isObject())
                        .map(Map.Entry::getKey)
                        .toList());
            }
        }
    }

    /** True where a count of this group is left out. */
    private static boolean leaveOutCounts(ObjectNode o) {
        List<String> counts = o.properties().stream()
                .filter(p -> p.getValue().isIntegralNumber() && p.getValue().asLong() > 0)
                .map(Map.Entry::getKey)
                .sorted(Comparator.comparingLong(n -> o.get(n).asLong()))
                .toList();
        long small =
                counts.stream().filter(n -> o.get(n).asLong() < Recoder.FEWEST).count();
        counts.stream().limit(small == 1 ? 2 : small).forEach(o::putNull);
        return small > 0;
    }
}
