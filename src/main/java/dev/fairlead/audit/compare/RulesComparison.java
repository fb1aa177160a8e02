package dev.fairlead.audit.compare;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.Each;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Judges the same cases by two rulebases and counts what changes; each case is measured once, or twice where a clinic's
 * own figures differ.
 */
public final class RulesComparison {
    private static final int EXAMPLES = 10;

    /** A case that ends otherwise. */
    public record Example(String caseId, String source, String from, String to) {}

    /**
     * One criterion.
     *
     * @param warnsA warnings by the first rulebase
     * @param warnsB warnings by the second
     * @param gained warnings that the second adds
     * @param lost warnings that the second drops
     * @param changes how often each ending became another
     * @param examples the first cases that gain or lose a warning
     */
    public record Line(
            String criterion,
            long judged,
            long warnsA,
            long warnsB,
            long gained,
            long lost,
            Map<String, Long> changes,
            List<Example> examples) {
        public boolean changed() {
            return !changes.isEmpty();
        }
    }

    /**
     * All of it.
     *
     * @param changed cases in which anything ends otherwise
     * @param unread cases that could not be read, the first with reasons
     */
    public record Result(long cases, long changed, List<Line> lines, long unread, List<String> reasons) {}

    private final Checker checker;
    /** Measures for the second rulebase where a clinic's own figures differ; else the same. */
    private final Checker other;

    private final Judge a;
    private final Judge b;
    private final List<String> idsA;
    private final List<String> idsB;
    private final Map<String, Counter> counters = new LinkedHashMap<>();
    private final List<String> reasons = new ArrayList<>();
    private long cases;
    private long changed;
    private long unread;

    public RulesComparison(Rulebase first, Rulebase second) {
        this.checker = new Checker(first);
        this.other = second.clinic().equals(first.clinic()) ? checker : new Checker(second);
        this.a = first.judge();
        this.b = second.judge();
        this.idsA = a.criteria();
        this.idsB = b.criteria();
        Set<String> all = new LinkedHashSet<>(idsA);
        all.addAll(idsB);
        all.forEach(id -> counters.put(id, new Counter()));
    }

    private static final class Counter {
        private long judged;
        private long warnsA;
        private long warnsB;
        private long gained;
        private long lost;
        private final Map<String, Long> changes = new TreeMap<>();
        private final List<Example> examples = new ArrayList<>();
    }

    private record Two(Ending[] a, Ending[] b) {}

    /** Runs over the sources. */
    public Result run(Sources sources, Audit.Settings settings, LongConsumer reached) {
        Each.<Reader.Got<Two>>run(
                sources,
                settings.threads(),
                settings.limit(),
                i -> Reader.with(i, c -> both(c, settings.check())),
                Reader::givenUp,
                this::add,
                reached);
        List<Line> lines = new ArrayList<>();
        counters.forEach((id, n) ->
                lines.add(new Line(id, n.judged, n.warnsA, n.warnsB, n.gained, n.lost, n.changes, n.examples)));
        return new Result(cases, changed, lines, unread, reasons);
    }

    private Two both(Case c, CheckOptions options) {
        List<CaseFact> facts = checker.facts(c, options);
        Stage reached = options.reach(c).judged();
        List<CaseFact> theirs = other == checker ? facts : other.facts(c, options);
        return new Two(
                a.judge(facts, reached).endings(), b.judge(theirs, reached).endings());
    }

    private void add(Reader.Got<Two> got) {
        if (got.value() == null) {
            unread++;
            if (reasons.size() < EXAMPLES) {
                reasons.add(got.source() + ": " + got.trouble());
            }
            return;
        }
        cases++;
        boolean any = false;
        for (Map.Entry<String, Counter> e : counters.entrySet()) {
            Ending before = at(got.value().a(), idsA.indexOf(e.getKey()));
            Ending after = at(got.value().b(), idsB.indexOf(e.getKey()));
            any |= count(got, e.getValue(), before, after);
        }
        changed += any ? 1 : 0;
    }

    private static boolean count(Reader.Got<Two> got, Counter n, @Nullable Ending before, @Nullable Ending after) {
        boolean was = before != null && before.warns();
        boolean is = after != null && after.warns();
        n.judged += before != null || after != null ? 1 : 0;
        n.warnsA += was ? 1 : 0;
        n.warnsB += is ? 1 : 0;
        n.gained += is && !was ? 1 : 0;
        n.lost += was && !is ? 1 : 0;
        if (before == after) {
            return false;
        }
        n.changes.merge(word(before) + " → " + word(after), 1L, Long::sum);
        if (was != is && n.examples.size() < EXAMPLES) {
            n.examples.add(new Example(got.id(), got.source(), word(before), word(after)));
        }
        return true;
    }

    private static @Nullable Ending at(Ending[] endings, int i) {
        return i < 0 ? null : endings[i];
    }

    private static String word(@Nullable Ending e) {
        return e == null
                ? "not asked"
                : e.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
