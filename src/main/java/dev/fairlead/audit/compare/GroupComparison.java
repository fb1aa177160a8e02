package dev.fairlead.audit.compare;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.audit.statistics.ShareDifference;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Group;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.check.Checker;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Two groups of cases side by side: two audits, two periods or two sites; not safe between threads. */
public final class GroupComparison {
    private static final Item.Content NOT_KEPT = new Item.Trouble("not kept");

    private final String a;
    private final String b;
    private final Tally tally;
    private final Set<String> ids = new HashSet<>();
    private final Set<String> both = new HashSet<>();
    private long neither;
    private long notJudged;

    /** {@code a} and {@code b} name the groups. */
    public GroupComparison(Checker checker, String a, String b) {
        this.a = a;
        this.b = b;
        this.tally = new Tally(checker, 0);
    }

    /** Counts a case of the first or second group; of neither where {@code group} is none of both. */
    public void add(CaseRow row, String group) {
        if (!row.judged()) {
            notJudged++;
        } else if (!row.superseded()) {
            if (group.equals(a) || group.equals(b)) {
                if (!ids.add(row.id())) {
                    both.add(row.id());
                }
                // no case is told one by one here, so none is kept
                tally.add(new Audit.Done(row.under(group), new Item(row.source(), NOT_KEPT, 0)));
            } else {
                neither++;
            }
        }
    }

    /**
     * One criterion in both groups.
     *
     * @param a warnings among the cases of the first group in which it was judged
     */
    public record Line(String criterion, Stage stage, Rate a, Rate b) {
        public ShareDifference difference() {
            return ShareDifference.of(a, b);
        }
    }

    /**
     * What both come to.
     *
     * @param both cases that stand in both groups, by pseudonym
     * @param neither cases that belong to none
     * @param first counts of the first group
     * @param comparisons each group against the other
     * @param lines criteria judged in both, the clearest difference first
     */
    public record Result(
            String a,
            String b,
            long both,
            long neither,
            long notJudged,
            Group first,
            Group second,
            Comparisons comparisons,
            List<Line> lines) {
        /** Cases with an open stop, of the first group less of the second. */
        public ShareDifference stops() {
            return ShareDifference.of(withStop(first), withStop(second));
        }

        public static Rate withStop(Group g) {
            return new Rate(g.withStop(), g.cases());
        }

        /** Facts given among those asked. */
        public ShareDifference given() {
            ClusteredRate x = first.completeness();
            ClusteredRate y = second.completeness();
            return ShareDifference.of(x.share(), x.low(), x.high(), y.share(), y.low(), y.high());
        }

        /** The first group against the second. */
        public Comparisons.Line against() {
            return comparisons.lines().stream()
                    .filter(l -> l.group() == first)
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** Of all that was added; a group without a case is refused by name. */
    public Result result() {
        Summary s = tally.summary();
        Group first = group(s, a);
        Group second = group(s, b);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < s.criteria().size(); i++) {
            CriterionCount c = s.criteria().get(i);
            Rate x = new Rate(first.warned()[i], first.judged()[i]);
            Rate y = new Rate(second.warned()[i], second.judged()[i]);
            if (!x.none() && !y.none()) {
                lines.add(new Line(c.id(), c.stage(), x, y));
            }
        }
        lines.sort(Comparator.comparingDouble((Line l) -> -clearness(l)).thenComparing(Line::criterion));
        return new Result(a, b, both.size(), neither, notJudged, first, second, s.comparisons(), lines);
    }

    /** How far the interval of the difference lies from none. */
    private static double clearness(Line l) {
        ShareDifference d = l.difference();
        return Math.max(d.low(), -d.high());
    }

    private static Group group(Summary s, String name) {
        return s.named().stream()
                .filter(g -> g.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name));
    }
}
