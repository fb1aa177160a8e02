package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Counts;
import dev.fairlead.model.Case;
import dev.fairlead.model.Visit;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FormWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One line of the list of cases.
 *
 * @param counted false while the file was not looked at yet, so that only its name is known
 * @param title the pseudonym, or the file's name
 * @param stage word of the stage; empty when the case names none
 * @param lastVisit day of the last visit; empty when there was none
 * @param due when the child is next due; empty when the case says nothing of it
 * @param changed when the file was last written, as a number that grows
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
        Optional<Due> due,
        long changed,
        Optional<Counts> counts,
        List<SpaceCourse> sides) {
    static CaseLine uncounted(String name) {
        return nameOnly(name, false, 0);
    }

    static CaseLine unreadable(String name, long changed) {
        return nameOnly(name, true, changed);
    }

    private static CaseLine nameOnly(String name, boolean counted, long changed) {
        return new CaseLine(
                name,
                counted,
                name.replaceAll("\\.[^.]*$", ""),
                "",
                "",
                "",
                Optional.empty(),
                changed,
                Optional.empty(),
                List.of());
    }

    static CaseLine of(Opened opened, Optional<Checked> checked, Catalogue rules, LocalDate today, long changed) {
        Optional<LocalDate> last = opened.reading().value().map(Case::visits).orElse(List.of()).stream()
                .map(Visit::date)
                .filter(d -> d.known())
                .map(d -> d.get())
                .max(LocalDate::compareTo);
        return new CaseLine(
                opened.name(),
                true,
                opened.title(),
                opened.typed("/stage"),
                opened.typed("/resident"),
                last.map(LocalDate::toString).orElse(""),
                opened.reading().value().flatMap(c -> Due.of(c, rules, today)),
                changed,
                checked.map(c -> c.report().counts()),
                checked.map(SpaceCourse::of).orElse(List.of()));
    }

    /** What else stands in the line: whose it is, when the child was seen, and the file where its name is another. */
    public String about() {
        List<String> all = new ArrayList<>();
        if (!resident.isEmpty()) {
            all.add("resident " + resident);
        }
        if (!lastVisit.isEmpty()) {
            all.add("last visit " + lastVisit);
        }
        if (!name.startsWith(title)) {
            all.add(name);
        }
        return String.join(" · ", all);
    }

    public String link() {
        return Urls.of(name);
    }

    /** The stage as it reads. */
    public String stageWords() {
        return FormWords.of(stage);
    }

    /**
     * The heaviest outcome that is open: {@code stop}, {@code caution}, {@code not-assessed}, {@code pass}, or empty.
     */
    String heaviest() {
        return counts.map(c -> c.stop() > 0
                        ? "stop"
                        : c.caution() > 0 ? "caution" : c.notAssessed() > 0 ? "not-assessed" : "pass")
                .orElse("");
    }

    boolean matches(Wanted wanted) {
        String all = (name + " " + title + " " + resident).toLowerCase(java.util.Locale.ROOT);
        return all.contains(wanted.text().toLowerCase(java.util.Locale.ROOT).strip())
                && (wanted.stage().isEmpty() || wanted.stage().equals(stage))
                && (wanted.resident().isEmpty() || wanted.resident().equals(resident))
                && (wanted.outcome().isEmpty() || wanted.outcome().equals(heaviest()));
    }

    /** Which lines a person wants to see, in which order; empty text stands for all. */
    public record Wanted(String text, String stage, String resident, String outcome, String sort) {
        /** The orders that can be chosen, with how they read. */
        public static final List<String[]> SORTS = List.of(
                new String[] {"due", "Due first"},
                new String[] {"heaviest", "Heaviest first"},
                new String[] {"changed", "Changed last"},
                new String[] {"title", "Pseudonym"});

        /** The outcomes that can be chosen, with how they read. */
        public static final List<String[]> OUTCOMES = List.of(
                new String[] {"stop", "With a stop"},
                new String[] {"caution", "With a caution"},
                new String[] {"not-assessed", "Only not assessed"},
                new String[] {"pass", "All pass"});

        Comparator<CaseLine> order() {
            Comparator<CaseLine> byTitle = Comparator.comparing(CaseLine::title);
            return switch (sort) {
                case "heaviest" ->
                    Comparator.<CaseLine>comparingInt(
                                    l -> -l.counts().map(Counts::stop).orElse(1000))
                            .thenComparingInt(
                                    l -> -l.counts().map(Counts::caution).orElse(0))
                            .thenComparingInt(
                                    l -> -l.counts().map(Counts::notAssessed).orElse(0))
                            .thenComparing(byTitle);
                case "changed" ->
                    Comparator.<CaseLine>comparingLong(l -> -l.changed()).thenComparing(byTitle);
                case "title" -> byTitle;
                default ->
                    Comparator.<CaseLine, LocalDate>comparing(
                                    l -> l.due().map(Due::from).orElse(LocalDate.MAX))
                            .thenComparing(byTitle);
            };
        }

        /** The same wishes as the query of an address. */
        public String query() {
            return "q=" + Urls.part(text) + "&stage=" + Urls.part(stage) + "&resident=" + Urls.part(resident)
                    + "&outcome=" + Urls.part(outcome) + "&sort=" + Urls.part(sort);
        }
    }
}
