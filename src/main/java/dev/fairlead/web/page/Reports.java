package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Report;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.model.Stage;
import dev.fairlead.web.edit.Opened;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Reports of the versions that were lately looked at, so that a page that shows the same case again does not check it
 * again.
 */
public final class Reports {
    private static final int KEPT = 128;

    private final Checks checks;
    private final Supplier<LocalDate> today;
    private volatile Uses.@Nullable Finder uses;
    private final Map<String, Uses> lately = new ConcurrentHashMap<>();
    private final Map<String, Checked> made = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Checked> eldest) {
            return size() > KEPT;
        }
    };

    public Reports(Checks checks, Supplier<LocalDate> today) {
        this.checks = checks;
        this.today = today;
    }

    public Checks checks() {
        return checks;
    }

    /** The findings of a case as it stands. */
    public Panel panel(Opened opened) {
        return new Panel(
                report(opened), opened.reading().problems(), false, Urls.of(opened.name()), uses(opened), Set.of());
    }

    /** The findings of a case as it would stand. */
    public Panel preview(Opened opened, CaseReading reading) {
        Optional<Report> report = reading.read()
                ? Optional.of(checks.check(reading, "", today.get(), false).report())
                : Optional.empty();
        return new Panel(report, reading.problems(), true, Urls.of(opened.name()), uses(opened), Set.of());
    }

    /** What was found for this case last, for it takes some time and changes little from one fact to the next. */
    private Uses uses(Opened opened) {
        Uses known = lately.get(opened.name());
        return known != null ? known : freshUses(opened);
    }

    private Uses.Finder finder() {
        Uses.Finder made = uses;
        if (made == null) {
            made = new Uses.Finder(checks.checker().rulebase());
            uses = made;
        }
        return made;
    }

    private Uses freshUses(Opened opened) {
        Optional<Uses> fresh = checked(opened).map(c -> finder().of(c.subject()));
        fresh.ifPresent(u -> lately.put(opened.name(), u));
        return fresh.orElse(Uses.NONE);
    }

    /** The findings of a case as it stands, with the uses of every fact as it stands. */
    public Panel whole(Opened opened) {
        return new Panel(
                report(opened),
                opened.reading().problems(),
                false,
                Urls.of(opened.name()),
                freshUses(opened),
                Set.of());
    }

    /** The report of a case; empty when it cannot be read. */
    public Optional<Report> report(Opened opened) {
        return checked(opened).map(Checked::report);
    }

    /** The case after its check, quick enough for every page; empty when it cannot be read. */
    public Optional<Checked> checked(Opened opened) {
        return made(opened, false);
    }

    /** The same with chances of another outcome, for pages that are read rather than typed on. */
    public Optional<Checked> sure(Opened opened) {
        return made(opened, true);
    }

    /** The case judged as if it had reached at least that stage; empty when it cannot be read. */
    Optional<Checked> upTo(Opened opened, Stage least) {
        return opened.reading().read()
                ? Optional.of(checks.checkUpTo(opened.reading(), opened.file().version(), today.get(), least))
                : Optional.empty();
    }

    /** The findings of a case with their chances of another outcome. */
    public Panel surePanel(Opened opened) {
        return new Panel(
                sure(opened).map(Checked::report),
                opened.reading().problems(),
                false,
                Urls.of(opened.name()),
                freshUses(opened),
                Set.of());
    }

    private Optional<Checked> made(Opened opened, boolean chances) {
        if (!opened.reading().read()) {
            return Optional.empty();
        }
        LocalDate day = today.get();
        String key = opened.name() + '\0' + opened.file().version() + '\0' + day + '\0' + chances;
        synchronized (made) {
            Checked known = made.get(key);
            if (known != null) {
                return Optional.of(known);
            }
        }
        Checked fresh = checks.check(opened.reading(), opened.file().version(), day, chances);
        synchronized (made) {
            made.put(key, fresh);
        }
        return Optional.of(fresh);
    }
}
