package dev.fairlead.report.summary;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.PlaceFinding;
import dev.fairlead.findings.SeenValue;
import dev.fairlead.rules.catalogue.Threshold;
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

    /** What the heaviest place shows, and how many more end so; places that decide nothing are left out. */
    public static String seen(Finding f) {
        List<String> same = f.places().stream()
                .filter(p -> p.outcome() == f.outcome() && (p.close() || !f.onTheLimit()))
                .sorted(Comparator.comparing(PlaceFinding::weight))
                .map(p -> p.words().isEmpty() || p.text().contains(p.words()) ? p.text() : p.words() + ": " + p.text())
                .toList();
        String first = same.isEmpty() ? f.seen() : same.get(0);
        return first + (same.size() > 1 ? "; and " + (same.size() - 1) + " more" : "");
    }

    /** What to do about it: what is on its limit is measured again. */
    public static String todo(Finding f) {
        return f.onTheLimit() ? "Measure again before relying on it." : f.todo();
    }

    /** On which side of its limit a value lies, and by how much, in words. */
    public static String margin(SeenValue v) {
        boolean upper = v.threshold().bound() == Threshold.Bound.UPPER;
        return v.margin() > 0
                ? v.marginText() + " inside"
                : v.margin() == 0 ? "just met" : v.marginText() + (upper ? " over" : " short");
    }
}
