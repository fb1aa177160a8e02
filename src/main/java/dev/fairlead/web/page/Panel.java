package dev.fairlead.web.page;

import dev.fairlead.findings.Counts;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.RepeatAdvice;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import dev.fairlead.findings.Words;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.measure.working.Working;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.FormSection;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The findings of a case as the pages show them.
 *
 * @param report empty when the case cannot be read
 * @param problems why it cannot be read, or what to look at again
 * @param typed true when it shows what is being typed, before it is in the case
 * @param base address below which the pages of the case stand
 * @param uses which criteria look at which fact
 * @param open identifiers of the findings that are shown whole; of the others a line, for the panel is renewed with
 *     every change
 */
public record Panel(
        Optional<Report> report, List<Problem> problems, boolean typed, String base, Uses uses, Set<String> open) {
    private static final int MOST_OPEN = 200;
    /** Chances below one in a hundred decide nothing. */
    private static final double LEAST_CHANCE = 0.01;

    private static final int MOST_REPEATS = 3;

    /** A group of findings with one outcome. */
    public record Group(String mark, String word, List<Finding> findings, boolean open) {}

    /** The same panel with those findings open that a page says are: identifiers with commas between. */
    Panel opening(String ids) {
        return new Panel(
                report,
                problems,
                typed,
                base,
                uses,
                ids == null
                        ? Set.of()
                        : Arrays.stream(ids.split(",", MOST_OPEN)).collect(Collectors.toSet()));
    }

    /** Findings by outcome, heaviest first; those that a person answers for have a group of their own. */
    public List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        add(groups, "stop", "Stop", f -> f.open() && f.weight() == Weight.STOP, true);
        add(groups, "caution", "Caution", f -> f.open() && f.weight() == Weight.CAUTION, true);
        add(
                groups,
                "not-assessed",
                "Not assessed",
                f -> f.outcome() == Status.NOT_ASSESSED && f.waiver().isEmpty(),
                false);
        add(groups, "waived", "Waived", f -> f.waiver().isPresent(), false);
        add(groups, "pass", "Pass", f -> f.outcome() == Status.PASS, false);
        add(
                groups,
                "does-not-apply",
                "Does not apply",
                f -> f.outcome() == Status.DOES_NOT_APPLY && f.waiver().isEmpty(),
                false);
        return groups;
    }

    /** True when the case has a finding of that criterion. */
    public boolean judged(String id) {
        return finding(id).isPresent();
    }

    /** The finding of a criterion; empty when the case has none or cannot be read. */
    Optional<Finding> finding(String id) {
        return report.flatMap(
                r -> r.findings().all().stream().filter(f -> f.id().equals(id)).findFirst());
    }

    /** Titles of criteria by their identifiers, without one. */
    public String titles(List<String> ids, String without) {
        return ids.stream().filter(id -> !id.equals(without)).map(this::title).collect(Collectors.joining("; "));
    }

    /** The title of a criterion's finding; its identifier when the case has none. */
    public String title(String id) {
        return finding(id).map(Finding::title).orElse(id);
    }

    /** What a criterion's finding shows of this case. */
    public String seen(String id) {
        return finding(id).map(Finding::seen).orElse("");
    }

    private void add(List<Group> groups, String mark, String word, Predicate<Finding> which, boolean open) {
        List<Finding> found = report.map(r -> r.findings().forReading().stream()
                        .filter(f -> which.test(r.findings().lead(f)))
                        .toList())
                .orElse(List.of());
        if (!found.isEmpty()) {
            groups.add(new Group(mark, word, found, open));
        }
    }

    public Optional<Counts> counts() {
        return report.map(Report::counts);
    }

    /** The outcome of a finding as the style sheet and the symbols name it. */
    public static String mark(Finding f) {
        return f.outcome() == Status.WARN
                ? f.weight().word()
                : f.outcome().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** The outcome of a finding as it reads. */
    public static String word(Finding f) {
        return dev.fairlead.web.form.FormWords.of(mark(f));
    }

    /** The worked numbers that a finding holds against its limits. */
    public List<Working> workings(Finding f) {
        return report.map(r -> r.workingsOf(f)).orElse(List.of());
    }

    /** Measurements worth taking again before others. */
    public List<RepeatAdvice> again() {
        return report.map(r -> r.repeats().stream()
                        .filter(a -> a.fewerFlips() >= LEAST_CHANCE)
                        .limit(MOST_REPEATS)
                        .toList())
                .orElse(List.of());
    }

    /** Where the field of a fact stands; empty when it stands on no page of the form. */
    public String link(String pointer) {
        FormSection section = FormSection.holding(pointer);
        return section == null
                ? ""
                : base + "/form/" + section.key() + "#" + FieldView.id(pointer.replaceFirst("/-$", ""));
    }

    /** The known facts that a finding rests on, with words. */
    public List<Missing> rests(Finding f) {
        return uses.by(f.id()).stream()
                .filter(p -> f.missing().stream().noneMatch(m -> m.pointer().equals(p)))
                .map(p -> new Missing(p, Words.of(p)))
                .toList();
    }

    /** True when a finding rests on a fact of that section, or waits for one. */
    boolean concerns(Finding f, FormSection section) {
        return Stream.concat(uses.by(f.id()).stream(), f.missing().stream().map(Missing::pointer))
                .anyMatch(p -> section.equals(FormSection.holding(p)));
    }
}
