package dev.fairlead.audit.agree;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.statistics.Kappa;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Compares the program's verdicts with a reviewer's while an audit runs. */
public final class Agreement {
    /** With fewer pairs a coefficient says nothing. */
    public static final int FEW = 10;

    private static final int MOST_TOLD = 500;

    /**
     * How far two agree on one criterion, or on cases as a whole.
     *
     * @param criterion empty for cases as a whole, {@code all} for all criteria together
     * @param pairs how many verdicts were compared
     * @param same how many were the same
     * @param plain Cohen's kappa over all verdicts
     * @param linear weighted over pairs on the scale from pass to stop, credit falling with the distance
     * @param quadratic the same, with the square of the distance
     * @param counts the program's verdicts down, the reviewer's across, both in the order of {@code words}
     */
    public record Line(
            String criterion,
            long pairs,
            long same,
            Kappa plain,
            Kappa linear,
            Kappa quadratic,
            List<Word> words,
            List<List<Long>> counts) {}

    /** A verdict on which they differ. */
    public record Difference(String caseId, String source, String criterion, Word program, Word reviewer) {}

    /**
     * All of it.
     *
     * @param lines cases as a whole, all criteria together, then criteria in catalogue order; those without pairs are
     *     left out
     * @param differences the first of them, in order
     * @param unknown cases with verdicts that the audit did not meet, or could not judge
     * @param panel how far the reviewers agree with each other
     */
    public record Result(
            List<Line> lines,
            List<Difference> differences,
            long differ,
            List<String> unknown,
            ReviewPanel.Result panel) {}

    private final Reviewer reviewer;
    private final List<String> ids;
    private final List<Word> words;
    private final Map<String, long[][]> tables = new LinkedHashMap<>();
    private final List<Difference> differences = new ArrayList<>();
    private final Set<String> met = new HashSet<>();
    private final ReviewPanel panel;
    private long differ;

    public Agreement(Reviewer reviewer, Catalogue catalogue) {
        this.reviewer = reviewer;
        this.ids = catalogue.criteria().stream().map(Criterion::id).toList();
        this.words = Arrays.stream(Word.values())
                .filter(w -> reviewer.plain() ? w != Word.CAUTION && w != Word.STOP : w != Word.WARN)
                .toList();
        this.panel = new ReviewPanel(reviewer.names(), words);
        tables.put("", new long[words.size()][words.size()]);
        tables.put("all", new long[words.size()][words.size()]);
        ids.forEach(id -> tables.put(id, new long[words.size()][words.size()]));
    }

    /** Takes a row; cases of which the reviewer says nothing count nowhere. */
    public void add(CaseRow row) {
        Map<String, Map<String, Word>> verdicts =
                row.judged() && !row.superseded() ? reviewer.byCase().get(row.id()) : null;
        if (verdicts == null) {
            return;
        }
        met.add(row.id());
        verdicts.forEach((criterion, given) -> {
            Word ours = criterion.isEmpty() ? whole(row) : one(row, ids.indexOf(criterion));
            panel.add(row.id(), criterion, given, ours);
            given.forEach((who, theirs) -> {
                count(criterion, ours, theirs);
                if (!criterion.isEmpty()) {
                    count("all", ours, theirs);
                }
                if (ours != theirs) {
                    differ++;
                    if (differences.size() < MOST_TOLD) {
                        differences.add(new Difference(row.id(), row.source(), criterion, ours, theirs));
                    }
                }
            });
        });
        panel.nextCase();
    }

    private Word one(CaseRow row, int criterion) {
        Ending e = row.ending(criterion);
        return e == null ? Word.DOES_NOT_APPLY : Word.of(e, reviewer.plain());
    }

    /** The heaviest of a case: a warning outweighs what is open, that outweighs a pass. */
    private Word whole(CaseRow row) {
        Ending heaviest = Ending.PASS;
        for (int i = 0; i < row.endings().length; i++) {
            Ending e = row.ending(i);
            heaviest = e != null && e.compareTo(heaviest) < 0 ? e : heaviest;
        }
        return Word.of(heaviest, reviewer.plain());
    }

    private void count(String criterion, Word ours, Word theirs) {
        Objects.requireNonNull(tables.get(criterion), criterion)[words.indexOf(ours)][words.indexOf(theirs)]++;
    }

    public Result result() {
        List<Line> lines = new ArrayList<>();
        tables.forEach((criterion, t) -> {
            long pairs = Arrays.stream(t).flatMapToLong(Arrays::stream).sum();
            if (pairs > 0) {
                long same = 0;
                for (int i = 0; i < t.length; i++) {
                    same += t[i][i];
                }
                long[][] scale = ordered(t);
                lines.add(new Line(
                        criterion,
                        pairs,
                        same,
                        Kappa.of(t, Kappa.NONE),
                        Kappa.of(scale, Kappa.LINEAR),
                        Kappa.of(scale, Kappa.QUADRATIC),
                        words,
                        Arrays.stream(t)
                                .map(r -> Arrays.stream(r).boxed().toList())
                                .toList()));
            }
        });
        return new Result(
                lines,
                differences,
                differ,
                reviewer.byCase().keySet().stream()
                        .filter(c -> !met.contains(c))
                        .toList(),
                panel.result());
    }

    private long[][] ordered(long[][] t) {
        int n = (int) words.stream().filter(Word::ordered).count();
        long[][] scale = new long[n][];
        for (int i = 0; i < n; i++) {
            scale[i] = Arrays.copyOf(t[i], n);
        }
        return scale;
    }
}
