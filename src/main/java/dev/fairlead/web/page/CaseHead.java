package dev.fairlead.web.page;

import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FormWords;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;

/**
 * What stands over every page of a case.
 *
 * @param here which tab is current
 * @param undo how many steps can be undone
 * @param redo how many undone steps can be done again
 * @param window a token of this window, by which its own edits are told from those of another
 */
public record CaseHead(Opened opened, String here, int undo, int redo, String window) {
    private static final Set<String> READING = Set.of("findings", "numbers", "pictures", "report");
    /** The pages of a case beside the form. */
    public static final List<Tab> TABS = List.of(
            new Tab("findings", "findings", "Findings"),
            new Tab("numbers", "numbers", "Numbers"),
            new Tab("pictures", "pictures", "Pictures"),
            new Tab("visits-page", "visits", "Visits"),
            new Tab("chair", "chair", "Chair"),
            new Tab("report", "report", "Report"));

    private static final SecureRandom RANDOM = new SecureRandom();

    /** One entry of the navigation over a case. */
    public record Tab(String key, String path, String title) {}

    static CaseHead of(Opened opened, String here, int[] steps, String window) {
        byte[] token = new byte[9];
        RANDOM.nextBytes(token);
        return new CaseHead(
                opened,
                here,
                steps[0],
                steps[1],
                window.isEmpty() ? HexFormat.of().formatHex(token) : window);
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

    /** Saving a YAML file with comments loses them: said where something can be changed. */
    public boolean losesComments() {
        return !READING.contains(here)
                && opened.file().yaml()
                && opened.file().text().lines().anyMatch(l -> l.stripLeading().startsWith("#") || l.contains(" #"));
    }
}
