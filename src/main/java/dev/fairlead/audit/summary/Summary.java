package dev.fairlead.audit.summary;

import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What an audit found.
 *
 * @param judged cases that were judged and counted
 * @param withDoubts of these, cases whose reading left a doubt
 * @param unnamed cases that name no resident
 * @param criteria one for each criterion, in catalogue order
 * @param residents by code, in order of the codes; the empty code stands for cases that name none
 * @param periods by time
 * @param missing facts that are missing, most frequent first
 * @param notes waivers that do not hold, by kind
 * @param looks cases that need a look first
 * @param lost rows of tables that count without facts that could not be read
 * @param earlier states of cases of which a later one counts
 * @param outturn whether it came out as planned
 * @param waivers who answers for what
 * @param since what changed since an earlier audit, where one was given
 * @param givenByStep facts given among those that each step is the first to ask for
 */
public record Summary(
        long judged,
        long withDoubts,
        long unnamed,
        List<StageCount> stages,
        List<CriterionCount> criteria,
        List<Group> residents,
        List<Group> periods,
        List<Gap> missing,
        List<Notes> notes,
        List<Look> looks,
        Trouble unread,
        Trouble tooLong,
        Trouble failed,
        Trouble earlier,
        Trouble errors,
        Trouble lost,
        Comparisons comparisons,
        Trends trends,
        Outturn outturn,
        WaiverReview waivers,
        Map<Stage, ClusteredRate> givenByStep,
        Optional<Since> since) {
    /** Beside an earlier audit: cases that were not there, and open warnings that came and went. */
    public record Since(long newCases, long fresh, long gone) {}

    /** Groups from which fewer warnings are expected are too small to say anything about. */
    public static final double FEW = 5;

    /** Waivers that do not hold for one kind of fault, by criterion. */
    public record Notes(String kind, List<NamedCount> criteria) {
        public long count() {
            return criteria.stream().mapToLong(NamedCount::count).sum();
        }
    }

    /** Rows of the source that were not judged, whatever the reason. */
    public long notJudged() {
        return unread.count() + tooLong.count() + failed.count();
    }

    /** Overall warn rate of each criterion; 0 where none was judged. */
    public double[] rates() {
        return criteria.stream()
                .mapToDouble(c -> c.judged() == 0 ? 0 : (double) c.warn() / c.judged())
                .toArray();
    }

    /** Groups that stand for a code. */
    public List<Group> named() {
        return residents.stream().filter(g -> named(g.name())).toList();
    }

    static boolean named(String resident) {
        return !resident.isEmpty() && !resident.equals(Tally.OTHERS);
    }

    /** Codes of residents that may mean the same person: they differ by case, leading letters or zeros alone. */
    public List<String> alikeCodes() {
        Map<String, List<String>> alike = new TreeMap<>();
        for (Group g : named()) {
            String key = g.name().toLowerCase(Locale.ROOT).replaceFirst("^[a-z]*-?0*(?=\\d)", "");
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(g.name());
        }
        return alike.values().stream()
                .filter(a -> a.size() > 1)
                .map(a -> String.join(" and ", a))
                .toList();
    }

    /** Facts given among those asked, over all cases. */
    public ClusteredRate completeness() {
        ClusteredRate.Sums all = new ClusteredRate.Sums();
        residents.forEach(g -> g.addTo(all));
        return all.rate();
    }

    /** Criteria that warn most often: which steps need teaching. */
    public List<CriterionCount> teaching(int most) {
        return criteria.stream()
                .filter(c -> c.warn() > 0)
                .sorted(Comparator.comparingLong((CriterionCount c) -> -c.warn())
                        .thenComparing(CriterionCount::id))
                .limit(most)
                .toList();
    }
}
