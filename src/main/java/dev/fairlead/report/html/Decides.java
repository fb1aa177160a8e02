package dev.fairlead.report.html;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Report;
import dev.fairlead.rules.Status;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * What decides: the warnings that stand, and the findings that another measurement could most easily turn.
 *
 * @param warnings open warnings, heaviest first; the first few
 * @param more open warnings beyond those
 * @param turning findings near to another outcome, the nearest first
 */
public record Decides(List<Finding> warnings, int more, List<Finding> turning) {
    private static final int SHOWN = 7;
    private static final int TURNING = 4;
    /** A finding that one child in twenty would have otherwise is worth a second reading; common practice, no source. */
    private static final double NEAR = 0.05;

    static Decides of(Report report) {
        List<Finding> open = report.findings().forReading().stream().filter(Finding::open).sorted(Comparator.comparing(Finding::weight)).toList();
        Predicate<Finding> near = f -> (f.close() || f.flip().orElse(0) >= NEAR) && f.outcome() != Status.NOT_ASSESSED;
        List<Finding> turning = report.findings().all().stream().filter(near)
                .sorted(Comparator.comparingDouble((Finding f) -> -f.flip().orElse(0))).limit(TURNING).toList();
        return new Decides(open.subList(0, Math.min(SHOWN, open.size())), Math.max(0, open.size() - SHOWN), turning);
    }
}
