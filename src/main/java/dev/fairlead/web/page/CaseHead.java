package dev.fairlead.web.page;

import dev.fairlead.findings.Reach;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FormWords;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What stands over every page of a case.
 *
 * @param here which tab is current
 * @param undo how many steps can be undone
 * @param redo how many undone steps can be done again
 * @param window a token of this window, by which its own edits are told from those of another
 * @param saved when the file was last written
 */
public record CaseHead(Opened opened, String here, int undo, int redo, String window, String saved) {
    private static final Set<String> READING = Set.of("findings", "numbers", "pictures", "report", "versions");
    /** The pages of a case beside the form. */
    public static final List<Tab> TABS = List.of(
            new Tab("findings", "findings", "Findings"),
            new Tab("numbers", "numbers", "Numbers"),
            new Tab("pictures", "pictures", "Pictures"),
            new Tab("measure", "measure", "Measure"),
            new Tab("wire", "wire", "Wire"),
            new Tab("visits-page", "visits", "Visits"),
            new Tab("chair", "chair", "Chair"),
            new Tab("report", "report", "Report"),
            new Tab("versions", "versions", "Versions"));

    private static final SecureRandom RANDOM = new SecureRandom();

    /** One entry of the navigation over a case. */
    public record Tab(String key, String path, String title) {}

    static CaseHead of(Opened opened, String here, int[] steps, String window, Optional<Instant> saved) {
        byte[] token = new byte[9];
        RANDOM.nextBytes(token);
        return new CaseHead(
                opened,
                here,
                steps[0],
                steps[1],
                window.isEmpty() ? HexFormat.of().formatHex(token) : window,
                saved.map(CaseHead::when).orElse(""));
    }

    /** Day and time to the minute. */
    static String moment(Instant at) {
        return LocalDateTime.ofInstant(at, ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.MINUTES)
                .toString()
                .replace('T', ' ');
    }

    /** The time of day; before today the day. */
    static String when(Instant at) {
        LocalDateTime local = LocalDateTime.ofInstant(at, ZoneId.systemDefault());
        return local.toLocalDate().equals(LocalDate.now(ZoneId.systemDefault()))
                ? local.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString()
                : local.toLocalDate().toString();
    }

    public String base() {
        return Urls.of(opened.name());
    }

    public String title() {
        return opened.title();
    }

    public String version() {
        return opened.file().version();
    }

    /** True on every page of the form. */
    public boolean facts() {
        return TABS.stream().noneMatch(t -> t.key().equals(here));
    }

    /** The stage of care as it reads; empty when the case names none. */
    public String stage() {
        return FormWords.of(opened.typed("/stage"));
    }

    /** The stage that what is recorded has reached, where the case names an earlier one; empty else. */
    public String reached() {
        return opened.reading()
                .value()
                .map(c -> Reach.of(c, Optional.empty(), Optional.empty()))
                .filter(r -> r.stated().isPresent() && !r.stated().get().hasReached(r.recorded()))
                .map(r -> r.recorded().word())
                .orElse("");
    }

    /** Saving a YAML file with comments loses them: said where something can be changed. */
    public boolean losesComments() {
        return !READING.contains(here)
                && opened.file().yaml()
                && opened.file().text().lines().anyMatch(l -> l.stripLeading().startsWith("#") || l.contains(" #"));
    }
}
