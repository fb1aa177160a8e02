package dev.fairlead.web.page;

import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.StoreException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The list of cases with what stands in each line, kept for as long as the file does not change: a folder may hold
 * hundreds.
 */
final class CaseList {
    private record Kept(String stamp, CaseLine line) {}

    private final Site site;
    private final Map<String, Kept> kept = new ConcurrentHashMap<>();

    CaseList(Site site) {
        this.site = site;
    }

    /** All lines; those that cannot be worked out within that time say only the file's name. */
    List<CaseLine> lines(Duration within) {
        CaseFolder folder = site.editor().folder();
        long end = System.nanoTime() + within.toNanos();
        List<CaseLine> all = new ArrayList<>();
        for (String name : folder.names()) {
            // a report counts for its day: a waiver may run out over night
            Optional<String> stamp = stamp(folder, name);
            Kept known = kept.get(name);
            if (stamp.isEmpty()) {
                continue;
            }
            if (known != null && known.stamp().equals(stamp.get())) {
                all.add(known.line());
            } else if (site.reports().checks().ready() && System.nanoTime() < end) {
                all.add(line(name, stamp.get()));
            } else {
                all.add(CaseLine.uncounted(name));
            }
        }
        kept.keySet().retainAll(all.stream().map(CaseLine::name).toList());
        return all;
    }

    /** What tells whether a file is still the one that was looked at; one that cannot be asked is looked at again. */
    private Optional<String> stamp(CaseFolder folder, String name) {
        try {
            return folder.stamp(name).map(s -> s + " " + site.today().get());
        } catch (StoreException e) {
            return Optional.of("");
        }
    }

    private CaseLine line(String name, String stamp) {
        long changed =
                site.editor().folder().saved(name).map(Instant::toEpochMilli).orElse(0L);
        CaseLine line;
        try {
            line = site.editor()
                    .open(name)
                    .map(o -> CaseLine.of(
                            o,
                            site.reports().checked(o),
                            site.reports().checks().catalogue(),
                            site.today().get(),
                            changed))
                    .orElse(CaseLine.unreadable(name, changed));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            // one bad file takes no other from the list, and least of all the program with it
            line = CaseLine.unreadable(name, changed);
        }
        kept.put(name, new Kept(stamp, line));
        return line;
    }
}
