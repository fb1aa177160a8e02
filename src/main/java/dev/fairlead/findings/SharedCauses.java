package dev.fairlead.findings;

import dev.fairlead.rules.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Warnings that share one cause: the heaviest alone tells the reason and what is disputed, the others refer to it. */
final class SharedCauses {
    private SharedCauses() {}

    /** All findings in their order, each lighter warning of a cause told by reference to the heaviest. */
    @SuppressWarnings("ReferenceEquality") // the heaviest is one of these findings, and not one like it
    static List<Finding> told(List<Finding> all, Catalogue catalogue) {
        List<Finding> told = new ArrayList<>(all);
        catalogue.causes().forEach((cause, ids) -> {
            Finding heaviest = heaviest(all, ids);
            if (heaviest == null) {
                return;
            }
            for (int i = 0; i < told.size(); i++) {
                Finding f = told.get(i);
                if (f.warns() && f != heaviest && ids.contains(f.id())) {
                    told.set(i, f.toldUnder(heaviest, cause));
                }
            }
        });
        return told;
    }

    /** Of the warnings among these criteria the heaviest, the first named of equals; null when none warns. */
    private static @Nullable Finding heaviest(List<Finding> all, List<String> ids) {
        Finding heaviest = null;
        for (String id : ids) {
            for (Finding f : all) {
                boolean heavier = f.id().equals(id)
                        && f.warns()
                        && (heaviest == null || f.weight().compareTo(heaviest.weight()) < 0);
                heaviest = heavier ? f : heaviest;
            }
        }
        return heaviest;
    }
}
