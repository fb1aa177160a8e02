package dev.fairlead.report.summary;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Findings;
import dev.fairlead.findings.RepeatAdvice;
import dev.fairlead.findings.Report;
import dev.fairlead.rules.catalogue.Status;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * What decides: the warnings that stand, and the findings that another measurement could most easily turn.
 *
 * @param warnings those that stand, heaviest first, then those that are waived; the first few
 * @param more warnings beyond those
 * @param turning other findings near to another outcome, the nearest first
 * @param repeats measurements to take again first
 * @param waiting facts that are missing, the one that most criteria wait for first; the first few
 * @param moreWaiting missing facts beyond those
 */
public record Decides(
        List<Finding> warnings,
        int more,
        List<Finding> turning,
        List<RepeatAdvice> repeats,
        List<MissingFact> waiting,
        int moreWaiting) {
    private static final int SHOWN = 7;
    private static final int TURNING = 3;
    /** Nobody measures more than that again before looking at the result. */
    private static final int REPEATS = 3;
    /** A measurement that makes outcomes surer by less is not worth the visit. */
    private static final double LEAST = 0.01;

    private static final int WAITING = 4;

    /** A warning stands that no waiver answers for. */
    public boolean stands() {
        return warnings.stream().anyMatch(f -> f.open() || f.onTheLimit());
    }

    /** What is to be settled: stops, cautions, what is on the limit; those that are waived last; by stage. */
    public static List<Finding> settle(Report report) {
        return Findings.grouped(report.findings().forReading().stream()
                .filter(f -> f.warns() || f.onTheLimit())
                .sorted(Comparator.comparing((Finding f) -> f.waiver().isPresent())
                        .thenComparing(Finding::weight))
                .toList());
    }

    public static Decides of(Report report) {
        List<Finding> warnings = settle(report);
        Predicate<Finding> near =
                f -> (f.close() || Chance.worthAWord(f)) && f.outcome() != Status.NOT_ASSESSED && !warnings.contains(f);
        List<Finding> turning = report.findings().all().stream()
                .filter(near)
                .sorted(Comparator.comparingDouble((Finding f) -> -f.flip().orElse(0)))
                .limit(TURNING)
                .toList();
        List<MissingFact> missing = MissingFact.of(report);
        return new Decides(
                first(warnings, SHOWN),
                Math.max(0, warnings.size() - SHOWN),
                turning,
                repeats(report),
                first(missing, WAITING),
                Math.max(0, missing.size() - WAITING));
    }

    /** Measurements worth taking again before looking at the result. */
    public static List<RepeatAdvice> repeats(Report report) {
        return first(
                report.repeats().stream().filter(r -> r.fewerFlips() >= LEAST).toList(), REPEATS);
    }

    private static <T> List<T> first(List<T> all, int most) {
        return all.subList(0, Math.min(most, all.size()));
    }
}
