package dev.fairlead.report.summary;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.PlaceFinding;
import java.util.Comparator;
import java.util.List;

/** A finding in the few words that a list of what decides has room for. */
public final class InShort {
    /** What is said of a warning whose cause was told with the one above it. */
    public static final String WITH_THE_ABOVE = "with the above";

    private InShort() {}

    /** The fault, or of a pass the fact that is on the limit. */
    public static String title(Finding f) {
        return f.onTheLimit() ? f.title() + ": on the limit" : f.title();
    }

    /** What the heaviest place shows, and how many more end in the same way; places that pass are left out. */
    public static String seen(Finding f) {
        List<String> same = f.places().stream()
                .filter(p -> p.outcome() == f.outcome())
                .sorted(Comparator.comparing(PlaceFinding::weight))
                .map(p -> p.words().isEmpty() || p.text().contains(p.words()) ? p.text() : p.words() + ": " + p.text())
                .toList();
        String first = same.isEmpty() ? f.seen() : same.get(0);
        return first + (same.size() > 1 ? "; and " + (same.size() - 1) + " more" : "");
    }
}
