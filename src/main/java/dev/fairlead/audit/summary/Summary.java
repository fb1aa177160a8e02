package dev.fairlead.audit.summary;

import dev.fairlead.audit.statistics.Discoveries;
import java.util.ArrayList;
import java.util.List;

/**
 * What an audit found.
 *
 * @param judged cases that were judged and counted
 * @param withDoubts of these, cases whose reading left a doubt
 * @param criteria one for each criterion, in catalogue order
 * @param residents by code, in order of the codes; the empty code stands for cases that name none
 * @param periods by time
 * @param missing facts that criteria wait for, most frequent first; entries of lists taken together as {@code *}
 * @param notes waivers that do not hold, by kind
 * @param looks cases that need a look first
 */
public record Summary(
        long judged,
        long withDoubts,
        List<StageCount> stages,
        List<CriterionCount> criteria,
        List<Group> residents,
        List<Group> periods,
        List<NamedCount> missing,
        List<Notes> notes,
        List<Look> looks,
        Trouble unread,
        Trouble tooLong,
        Trouble failed,
        Trouble duplicates,
        Trouble errors) {
    /** Expected share of false alarms among what is pointed out. */
    public static final double FALSE_ALARMS = 0.05;
    /** Groups from which fewer warnings are expected are too small to say anything about. */
    public static final double FEW = 5;

    /** Waivers that do not hold for one kind of fault, by criterion. */
    public record Notes(String kind, List<NamedCount> criteria) {
        public long count() {
            return criteria.stream().mapToLong(NamedCount::count).sum();
        }
    }

    /**
     * A resident and criterion, or a resident overall ({@code criterion} empty), that chance alone does not explain.
     */
    public record Signal(String group, String criterion, int warned, double expected, int judged) {
        public boolean more() {
            return warned > expected;
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
        return residents.stream()
                .filter(g -> !g.name().isEmpty() && !g.name().equals(Tally.OTHERS))
                .toList();
    }

    /**
     * What stands out among residents, over all criteria together and one by one, with false alarms held to
     * {@link #FALSE_ALARMS}; in order of codes.
     */
    public List<Signal> signals() {
        List<Signal> all = new ArrayList<>();
        List<Double> p = new ArrayList<>();
        double[] rates = rates();
        for (Group g : named()) {
            all.add(new Signal(
                    g.name(),
                    "",
                    g.warnings(),
                    g.expected(rates),
                    java.util.Arrays.stream(g.judged()).sum()));
            p.add(Discoveries.ofCount(g.warnings(), g.expected(rates)));
            for (int i = 0; i < rates.length; i++) {
                all.add(new Signal(
                        g.name(), criteria.get(i).id(), g.warned()[i], g.judged()[i] * rates[i], g.judged()[i]));
                p.add(Discoveries.ofShare(g.warned()[i], g.judged()[i], rates[i]));
            }
        }
        boolean[] found =
                Discoveries.at(FALSE_ALARMS, p.stream().mapToDouble(x -> x).toArray());
        List<Signal> out = new ArrayList<>();
        for (int i = 0; i < found.length; i++) {
            if (found[i] && named().size() > 1) {
                out.add(all.get(i));
            }
        }
        return out;
    }
}
