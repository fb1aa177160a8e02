package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.web.edit.CaseValues;
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
        return (int) CaseValues.of(opened).keySet().stream()
                .filter(p -> s.roots().stream().anyMatch(r -> p.equals(r) || p.startsWith(r + "/")))
                .count();
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
}
