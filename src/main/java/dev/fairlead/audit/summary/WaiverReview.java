package dev.fairlead.audit.summary;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.statistics.Rate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;

/**
 * Who answers for findings, why, since when and until when.
 *
 * @param count waivers that hold
 * @param soon the first of them to end, soonest first
 * @param residents waived among warnings, by code
 * @param roles how many are answered for by each role
 */
public record WaiverReview(long count, List<One> soon, Map<String, Rate> residents, List<NamedCount> roles) {
    /** Days before its end from which a waiver is told as expiring. */
    public static final int EXPIRING = 30;

    private static final int MOST = 200;

    /**
     * A waiver that holds.
     *
     * @param age days since it was given, on the day for which the case was judged
     * @param left days until it ends
     */
    public record One(String caseId, String resident, CaseRow.Answered waiver, long age, long left) {
        public boolean expiring() {
            return left <= EXPIRING;
        }
    }

    /** How many of the first end within a month. */
    public long expiring() {
        return soon.stream().filter(One::expiring).count();
    }

    /** Adds up as rows come. */
    static final class Counter {
        private static final Comparator<One> SOONEST = Comparator.comparingLong(One::left)
                .thenComparing(One::caseId)
                .thenComparing(o -> o.waiver().criterion());
        private final PriorityQueue<One> first = new PriorityQueue<>(SOONEST.reversed());
        private final Map<String, long[]> residents = new TreeMap<>();
        private final Map<String, long[]> roles = new TreeMap<>();
        private long count;

        /** {@code resident} is a code, or a name for those beyond the most that are told apart. */
        void add(CaseRow row, String resident, int warnings) {
            if (Summary.named(resident)) {
                long[] r = residents.computeIfAbsent(resident, x -> new long[2]);
                r[0] += row.waived().size();
                // a waiver may answer for what is not assessed: then there is a finding, and no warning
                r[1] += Math.max(warnings, row.waived().size());
            }
            for (CaseRow.Answered w : row.details().waivers()) {
                count++;
                roles.computeIfAbsent(w.by(), x -> new long[1])[0]++;
                LocalDate day = LocalDate.parse(row.day());
                first.add(new One(
                        row.id(),
                        row.resident(),
                        w,
                        ChronoUnit.DAYS.between(LocalDate.parse(w.date()), day),
                        ChronoUnit.DAYS.between(day, LocalDate.parse(w.expires()))));
                if (first.size() > MOST) {
                    first.poll();
                }
            }
        }

        WaiverReview review() {
            Map<String, Rate> rates = new TreeMap<>();
            residents.forEach((name, r) -> rates.put(name, new Rate(r[0], r[1])));
            List<One> soon = new ArrayList<>(first);
            soon.sort(SOONEST);
            return new WaiverReview(count, soon, rates, NamedCount.most(roles));
        }
    }
}
