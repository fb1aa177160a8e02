package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Counts;
import dev.fairlead.model.Case;
import dev.fairlead.model.Visit;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FormWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One line of the list of cases.
 *
 * @param counted false while the file was not looked at yet, so that only its name is known
 * @param title the pseudonym, or the file's name
 * @param stage word of the stage; empty when the case names none
 * @param lastVisit day of the last visit; empty when there was none
 * @param counts empty when the case cannot be read
 * @param sides progress towards the space that is needed, right then left
 */
public record CaseLine(
        String name,
        boolean counted,
        String title,
        String stage,
        String resident,
        String lastVisit,
        Optional<Counts> counts,
        List<SpaceCourse> sides) {
    static CaseLine uncounted(String name) {
        return nameOnly(name, false);
    }

    static CaseLine unreadable(String name) {
        return nameOnly(name, true);
    }

    private static CaseLine nameOnly(String name, boolean counted) {
        return new CaseLine(name, counted, name.replaceAll("\\.[^.]*$", ""), "", "", "", Optional.empty(), List.of());
    }

    static CaseLine of(Opened opened, Optional<Checked> checked) {
        String last = opened.reading().value().map(Case::visits).orElse(List.of()).stream()
                .map(Visit::date)
                .filter(d -> d.known())
                .map(d -> d.get())
                .max(LocalDate::compareTo)
                .map(LocalDate::toString)
                .orElse("");
        return new CaseLine(
                opened.name(),
                true,
                opened.title(),
                opened.typed("/stage"),
                opened.typed("/resident"),
                last,
                checked.map(c -> c.report().counts()),
                checked.map(SpaceCourse::of).orElse(List.of()));
    }

    public String link() {
        return Urls.of(name);
    }

    /** The stage as it reads. */
    public String stageWords() {
        return FormWords.of(stage);
    }

    boolean matches(String text, String wanted) {
        String all = (name + " " + title + " " + resident).toLowerCase(java.util.Locale.ROOT);
        return all.contains(text.toLowerCase(java.util.Locale.ROOT).strip())
                && (wanted.isEmpty() || wanted.equals(stage));
    }
}
