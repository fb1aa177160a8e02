package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.shape.RecordShape;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FormSection;
import java.util.List;

/**
 * One entry of the list of sections.
 *
 * @param filled values that stand in the case there
 * @param mark heaviest open outcome among the findings that rest on its facts: {@code stop}, {@code caution},
 *     {@code not-assessed} or empty
 */
public record SectionNav(FormSection section, String link, boolean here, int filled, String mark) {
    private static final List<String> ORDER = List.of("stop", "caution");

    static List<SectionNav> of(Opened opened, Panel panel, FormSection here) {
        return FormSection.ALL.stream()
                .map(s -> new SectionNav(
                        s,
                        Urls.of(opened.name()) + "/form/" + s.key(),
                        s.equals(here),
                        filled(opened, s),
                        mark(panel, s)))
                .toList();
    }

    private static int filled(Opened opened, FormSection s) {
        return opened.tree()
                .map(t -> s.roots().stream().mapToInt(r -> count(t, r)).sum())
                .orElse(0);
    }

    private static String mark(Panel panel, FormSection s) {
        List<String> marks = panel.report()
                .map(r -> r.findings().all().stream()
                        .filter(Finding::open)
                        .filter(f -> panel.concerns(f, s))
                        .map(Panel::mark)
                        .toList())
                .orElse(List.of());
        return ORDER.stream().filter(marks::contains).findFirst().orElse("");
    }

    /** Counts the values that stand in a part of a case. */
    private static int count(CaseTree tree, String pointer) {
        int size = tree.size(pointer);
        boolean fact = CasePaths.field(pointer).map(f -> f.kind().fact()).orElse(false);
        if (size == 0 || fact) {
            return tree.get(pointer).isPresent() ? 1 : 0;
        }
        int all = 0;
        List<String> keys = tree.keys(pointer);
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
            all += count(tree, pointer + "/" + RecordShape.escape(key));
        }
        return all;
    }
}
