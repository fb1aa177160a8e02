package dev.fairlead.audit.agree;

import dev.fairlead.audit.cohort.Truth;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.measure.wire.ForceModel;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Compares an audit of invented cases with what was planted in them: how many faults each criterion finds, and how many
 * it finds where there is none.
 */
public final class Detection {
    private static final int MOST_TOLD = 500;

    /**
     * One criterion.
     *
     * @param sensitivity warnings among the cases in which it has to warn
     * @param specificity no warnings among the cases in which it must not
     * @param open not assessed among the cases in which facts that it needs were left out
     * @param openSpecificity assessed among all others to which it applies
     * @param leftOut verdicts that only the beam model of the wire could give, which was left out: they count nowhere
     * @param reasons how often it ended otherwise than planted, by what was planted and found
     */
    public record Line(
            String criterion,
            Rate sensitivity,
            Rate specificity,
            Rate open,
            Rate openSpecificity,
            long leftOut,
            List<Reason> reasons) {
        /** True when everything planted was found, and nothing else. */
        public boolean exact() {
            return sensitivity.count() == sensitivity.of()
                    && specificity.count() == specificity.of()
                    && open.count() == open.of()
                    && openSpecificity.count() == openSpecificity.of();
        }
    }

    /** What was planted and what was found instead, how often, and the first of them. */
    public record Reason(String planted, String found, long cases, Miss first) {}

    /**
     * A case and criterion that ended otherwise than planted.
     *
     * @param why what was planted in the case, or what is missing
     */
    public record Miss(String caseId, String source, String criterion, String planted, String found, String why) {}

    /** All of it: criteria in catalogue order, the first misses, and cases without a truth. */
    public record Result(List<Line> lines, List<Miss> misses, long missed, long cases, long withoutTruth) {
        public boolean exact() {
            return missed == 0;
        }
    }

    private record Known(Set<String> warns, Set<String> open, List<Truth.Told> told) {}

    private final Map<String, Known> truths;
    private final List<String> ids;
    private final long[][] counts;
    private final List<Miss> misses = new ArrayList<>();
    private final Map<String, Map<String, Reason>> reasons = new HashMap<>();
    private long missed;
    private long cases;
    private long without;

    private Detection(Map<String, Known> truths, Catalogue catalogue) {
        this.truths = truths;
        this.ids = catalogue.criteria().stream().map(Criterion::id).toList();
        this.counts = new long[ids.size()][9];
    }

    /** Reads the truth, one case a line; it is held in memory. */
    public static Detection read(Path file, Catalogue catalogue) throws IOException, TableException {
        Map<String, Known> truths = new HashMap<>();
        int number = 0;
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                if (!line.isBlank()) {
                    Truth t = Truth.parse(line);
                    truths.put(
                            t.id(), t.planted().isEmpty() ? CLEAN : new Known(t.warns(), t.notAssessed(), t.planted()));
                }
            }
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new TableException(file + ": line " + number + " does not say what was planted in a case");
        }
        return new Detection(truths, catalogue);
    }

    private static final Known CLEAN = new Known(Set.of(), Set.of(), List.of());

    /** Takes a row. */
    public void add(CaseRow row) {
        if (!row.judged() || row.superseded()) {
            return;
        }
        Known truth = truths.get(row.id());
        if (truth == null) {
            without++;
            return;
        }
        cases++;
        for (int i = 0; i < row.endings().length; i++) {
            Ending e = row.ending(i);
            if (e == null) {
                continue;
            }
            String id = ids.get(i);
            if (e == Ending.NOT_ASSESSED && ForceModel.leftOut(row.missing().getOrDefault(id, List.of()))) {
                counts[i][8]++;
                continue;
            }
            boolean warns = truth.warns().contains(id);
            boolean waits = truth.open().contains(id);
            boolean open = e == Ending.NOT_ASSESSED || e == Ending.FAILED;
            long[] n = counts[i];
            n[warns ? 1 : 3]++;
            n[warns ? 0 : 2] += warns == e.warns() ? 1 : 0;
            n[waits ? 5 : 7]++;
            n[waits ? 4 : 6] += waits == open ? 1 : 0;
            if (warns != e.warns() || waits != open) {
                miss(row, id, warns ? "warn" : waits ? "not assessed" : "neither", e, truth);
            }
        }
    }

    private void miss(CaseRow row, String id, String planted, Ending e, Known truth) {
        missed++;
        String found = e.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        Map<String, Reason> so = reasons.computeIfAbsent(id, k -> new TreeMap<>());
        Reason before = so.get(planted + found);
        if (before == null || misses.size() < MOST_TOLD) {
            String why = row.missing().containsKey(id)
                    ? "waits for " + String.join(" ", row.missing().get(id))
                    : truth.told().isEmpty()
                            ? "nothing was planted"
                            : "planted: "
                                    + truth.told().stream()
                                            .map(t -> t.criterion() + " (" + t.says() + ")")
                                            .collect(Collectors.joining("; "));
            Miss miss = new Miss(row.id(), row.source(), id, planted, found, why);
            so.putIfAbsent(planted + found, new Reason(planted, found, 0, miss));
            if (misses.size() < MOST_TOLD) {
                misses.add(miss);
            }
        }
        so.computeIfPresent(planted + found, (k, r) -> new Reason(planted, found, r.cases() + 1, r.first()));
    }

    public Result result() {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            long[] n = counts[i];
            lines.add(new Line(
                    ids.get(i),
                    new Rate(n[0], n[1]),
                    new Rate(n[2], n[3]),
                    new Rate(n[4], n[5]),
                    new Rate(n[6], n[7]),
                    n[8],
                    List.copyOf(reasons.getOrDefault(ids.get(i), Map.of()).values())));
        }
        return new Result(lines, List.copyOf(misses), missed, cases, without);
    }
}
