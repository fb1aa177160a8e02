package dev.fairlead.web.edit;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** All values of a case by pointer, and what differs between two versions. */
public final class CaseValues {
    private CaseValues() {}

    /**
     * One value that differs.
     *
     * @param old as typed; empty for nothing
     * @param now as typed; empty for nothing
     */
    public record Change(String pointer, String old, String now) {}

    /** The values that stand in a case as a person would type them, in the order of the file. */
    public static Map<String, String> of(Opened opened) {
        Map<String, String> all = new LinkedHashMap<>();
        opened.tree().ifPresent(t -> t.keys("").forEach(k -> add(t, "/" + RecordShape.escape(k), all)));
        return all;
    }

    /** What differs between two versions. */
    public static List<Change> changes(Opened before, Opened after) {
        Map<String, String> old = of(before);
        Map<String, String> now = of(after);
        Set<String> pointers = new LinkedHashSet<>(old.keySet());
        pointers.addAll(now.keySet());
        List<Change> all = new ArrayList<>();
        for (String p : pointers) {
            String was = old.getOrDefault(p, "");
            String is = now.getOrDefault(p, "");
            if (!was.equals(is)) {
                all.add(new Change(p, was, is));
            }
        }
        return all;
    }

    private static void add(CaseTree tree, String pointer, Map<String, String> to) {
        boolean fact = CasePaths.field(pointer).map(f -> f.kind().fact()).orElse(false);
        List<String> keys = fact ? List.of() : tree.keys(pointer);
        int entries = fact || !keys.isEmpty() ? 0 : tree.size(pointer);
        if (keys.isEmpty() && entries == 0) {
            tree.get(pointer).filter(v -> !v.isEmpty()).ifPresent(v -> to.put(pointer, v));
        }
        keys.forEach(k -> add(tree, pointer + "/" + RecordShape.escape(k), to));
        for (int i = 0; i < entries; i++) {
            add(tree, pointer + "/" + i, to);
        }
    }
}
