package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.rules.catalogue.Status;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A fact that criteria wait for.
 *
 * @param at its place among those that are offered, from 0
 * @param of how many are offered
 * @param criteria how many wait for it
 * @param why titles of the first of them
 */
public record NextFact(int at, int of, String pointer, String words, String page, int criteria, String why) {
    /** So many are offered: more is a list that nobody works through. */
    private static final int MOST = 10;

    /** The facts that most criteria wait for, the one that helps most first. */
    static List<NextFact> all(Panel panel) {
        Map<Missing, List<Finding>> waiting = new LinkedHashMap<>();
        panel.report()
                .ifPresent(r -> r.findings().all().stream()
                        .filter(f -> f.outcome() == Status.NOT_ASSESSED)
                        .forEach(f -> f.missing()
                                .forEach(m -> waiting.computeIfAbsent(m, k -> new ArrayList<>())
                                        .add(f))));
        List<Map.Entry<Missing, List<Finding>>> most = waiting.entrySet().stream()
                .filter(e -> !panel.link(e.getKey().pointer()).isEmpty())
                .sorted(Comparator.comparingInt(e -> -e.getValue().size()))
                .limit(MOST)
                .toList();
        List<NextFact> all = new ArrayList<>();
        for (Map.Entry<Missing, List<Finding>> e : most) {
            all.add(new NextFact(
                    all.size(),
                    most.size(),
                    e.getKey().pointer(),
                    e.getKey().words(),
                    panel.link(e.getKey().pointer()),
                    e.getValue().size(),
                    String.join(
                            "; ",
                            e.getValue().stream().map(Finding::title).limit(2).toList())));
        }
        return all;
    }

    /** The one that an address says was offered; null when none was, or it is no longer missing. */
    static @Nullable NextFact offered(String pointer, Panel panel) {
        return pointer.isEmpty()
                ? null
                : all(panel).stream()
                        .filter(f -> f.pointer().equals(pointer))
                        .findFirst()
                        .orElse(null);
    }

    /**
     * Where the next one is asked for. One that was offered and is still missing was passed over: the one after it
     * follows, and after the last the first.
     */
    static String after(String at, String was, Panel panel, String none) {
        List<NextFact> all = all(panel);
        if (all.isEmpty()) {
            return none;
        }
        int place = at != null && at.matches("[0-9]") ? Integer.parseInt(at) : 0;
        boolean passed = all.stream().anyMatch(f -> f.pointer().equals(was));
        return all.get((passed ? place + 1 : place) % all.size()).link();
    }

    /** The field, on a page that goes on from there. */
    public String link() {
        return page.replaceFirst("#", "?next=" + Urls.part(pointer) + "#");
    }

    /** What is said over the form. */
    public String offer() {
        return "Missing fact " + (at + 1) + " of " + of + ": " + words + ". "
                + (criteria == 1 ? "One criterion waits" : criteria + " criteria wait") + " for it: " + why + ".";
    }
}
