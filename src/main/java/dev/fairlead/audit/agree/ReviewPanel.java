package dev.fairlead.audit.agree;

import dev.fairlead.audit.statistics.Alpha;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.statistics.Jackknife;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** How far several reviewers agree with each other and with the program; units are verdicts, clusters are cases. */
public final class ReviewPanel {
    /** What the program is called among reviewers. */
    public static final String PROGRAM = "program";

    private static final int MOST_DISAGREED = 10;

    /**
     * Two judges.
     *
     * @param same share of the same verdicts, with the interval that allows for cases
     * @param kappa Cohen's kappa over all verdicts
     */
    public record Pair(String a, String b, ClusteredRate same, Jackknife kappa) {}

    /** A case on which reviewers differ, and on what. */
    public record Disagreed(String caseId, int items, String on) {}

    /**
     * All of it.
     *
     * @param reviewers alpha of the reviewers alone, on the scale from pass to stop
     * @param withProgram the same with the program as one more judge
     * @param same share of pairs of reviewers' verdicts that are the same
     * @param calibration cases most disagreed on, to be talked over
     */
    public record Result(
            List<String> names,
            List<Pair> pairs,
            Jackknife reviewers,
            Jackknife withProgram,
            ClusteredRate same,
            List<Disagreed> calibration) {
        /** True where there is more than one reviewer to compare. */
        public boolean several() {
            return names.size() > 1;
        }
    }

    private final List<String> judges;
    private final List<Word> words;
    private final int scale;
    private final Alpha.Answers reviewers;
    private final Alpha.Answers withProgram;
    private final Map<String, List<double[][]>> tables = new TreeMap<>();
    private final Map<String, double[][]> open = new TreeMap<>();
    private final ClusteredRate.Sums same = new ClusteredRate.Sums();
    private final List<Disagreed> disagreed = new ArrayList<>();
    private final List<String> names;
    private final List<String> differing = new ArrayList<>();
    private String caseId = "";
    private long pairsSame;
    private long pairsAll;

    ReviewPanel(List<String> names, List<Word> words) {
        this.names = names;
        this.judges = new ArrayList<>(names);
        this.judges.add(PROGRAM);
        this.words = words;
        this.scale = (int) words.stream().filter(Word::ordered).count();
        this.reviewers = new Alpha.Answers(scale);
        this.withProgram = new Alpha.Answers(scale);
    }

    /** The verdicts on one question of the case that is open. */
    void add(String id, String criterion, Map<String, Word> given, Word program) {
        caseId = id;
        int[] counts = new int[scale];
        given.values().stream().filter(Word::ordered).forEach(w -> counts[words.indexOf(w)]++);
        reviewers.question(counts);
        if (program.ordered()) {
            counts[words.indexOf(program)]++;
        }
        withProgram.question(counts);
        for (int a = 0; a < judges.size(); a++) {
            for (int b = a + 1; b < judges.size(); b++) {
                Word first = verdict(judges.get(a), given, program);
                Word second = verdict(judges.get(b), given, program);
                if (first != null && second != null) {
                    open.computeIfAbsent(a + " " + b, k -> new double[words.size()][words.size()])[
                            words.indexOf(first)][words.indexOf(second)]++;
                    boolean both = b < names.size();
                    pairsAll += both ? 1 : 0;
                    pairsSame += both && first == second ? 1 : 0;
                }
            }
        }
        if (given.values().stream().distinct().count() > 1) {
            differing.add(criterion.isEmpty() ? "the case as a whole" : criterion);
        }
    }

    private static @Nullable Word verdict(String judge, Map<String, Word> given, Word program) {
        return judge.equals(PROGRAM) ? program : given.get(judge);
    }

    /** What follows is of another case. */
    void nextCase() {
        open.forEach((pair, table) ->
                tables.computeIfAbsent(pair, k -> new ArrayList<>()).add(table));
        open.clear();
        same.add(pairsSame, pairsAll);
        pairsSame = 0;
        pairsAll = 0;
        if (!differing.isEmpty()) {
            disagreed.add(new Disagreed(caseId, differing.size(), String.join(", ", differing)));
            differing.clear();
        }
        reviewers.nextCase();
        withProgram.nextCase();
    }

    Result result() {
        List<Pair> pairs = new ArrayList<>();
        for (int a = 0; a < judges.size(); a++) {
            for (int b = a + 1; b < judges.size(); b++) {
                List<double[][]> byCase = tables.getOrDefault(a + " " + b, List.of());
                ClusteredRate.Sums agreed = new ClusteredRate.Sums();
                for (double[][] t : byCase) {
                    long diagonal = 0;
                    long all = 0;
                    for (int i = 0; i < t.length; i++) {
                        diagonal += (long) t[i][i];
                        for (double n : t[i]) {
                            all += (long) n;
                        }
                    }
                    agreed.add(diagonal, all);
                }
                pairs.add(new Pair(judges.get(a), judges.get(b), agreed.rate(), Jackknife.kappa(byCase)));
            }
        }
        return new Result(
                names,
                pairs,
                reviewers.alpha(Alpha.ORDINAL),
                withProgram.alpha(Alpha.ORDINAL),
                same.rate(),
                disagreed.stream()
                        .sorted(Comparator.comparingInt((Disagreed d) -> -d.items())
                                .thenComparing(Disagreed::caseId))
                        .limit(MOST_DISAGREED)
                        .toList());
    }
}
