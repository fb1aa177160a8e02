package dev.fairlead.web.page;

import dev.fairlead.intake.CasePaths;
import dev.fairlead.intake.CaseTree;

/** Counts the values that stand in a part of a case. */
final class Filled {
    private Filled() {}

    static int count(CaseTree tree, String pointer) {
        int size = tree.size(pointer);
        boolean fact = CasePaths.field(pointer).map(f -> f.kind().fact()).orElse(false);
        if (size == 0 || fact) {
            return tree.get(pointer).isPresent() ? 1 : 0;
        }
        int all = 0;
        java.util.List<String> keys = tree.keys(pointer);
        if (keys.isEmpty()) {
            // entries of a list, or readings of one quantity
            if (tree.keys(pointer + "/0").isEmpty()) {
                return 1;
            }
            for (int i = 0; i < size; i++) {
                all += count(tree, pointer + "/" + i);
            }
            return all;
        }
        for (String key : keys) {
            all += count(tree, pointer + "/" + dev.fairlead.model.shape.RecordShape.escape(key));
        }
        return all;
    }
}
