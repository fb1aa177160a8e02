package dev.fairlead.web.page;

import dev.fairlead.findings.Report;
import dev.fairlead.model.Case;
import dev.fairlead.model.Visit;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One line of the list of cases.
 *
 * @param report empty when the case cannot be read
 * @param sides progress towards the space that is needed, right then left
 */
public record CaseLine(Opened opened, Optional<Report> report, List<SideSpace> sides) {
    public String link() {
        return Urls.of(opened.name());
    }

    public String stage() {
        return Words.of(opened.typed("/stage"));
    }

    /** The day of the last visit; empty when there was none. */
    public String lastVisit() {
        return opened.reading().value().map(Case::visits).orElse(List.of()).stream().map(Visit::date).filter(d -> d.known()).map(d -> d.get())
                .max(LocalDate::compareTo).map(LocalDate::toString).orElse("");
    }

    boolean matches(String text, String stage) {
        String all = (opened.name() + " " + opened.title() + " " + opened.typed("/resident")).toLowerCase(java.util.Locale.ROOT);
        return all.contains(text.toLowerCase(java.util.Locale.ROOT).strip()) && (stage.isEmpty() || stage.equals(opened.typed("/stage")));
    }
}
