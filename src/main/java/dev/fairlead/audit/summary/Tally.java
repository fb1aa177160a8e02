package dev.fairlead.audit.summary;

import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.run.LastAudit;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.check.Checker;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/** Counts rows as they come, keeping some 100 bytes of each; not safe between threads. */
public final class Tally {
    /**
     * Residents, missing facts and the like beyond this are counted under one name: somebody numbers cases where codes
     * are asked for.
     */
    private static final int MOST_NAMES = 5_000;

    private static final int MOST_TOLD = 200;
    static final String OTHERS = "(others)";

    private final List<Criterion> criteria;
    private final List<String> ids;
    private final int looks;
    private final @Nullable LastAudit last;
    private long fresh;
    private long gone;
    private long newCases;
    private final long[][] endings;
    private final long[] waived;
    private final Map<Stage, StageCount.Counter> stages = new EnumMap<>(Stage.class);
    private final AskedFacts facts;
    private final CaseStore store;
    private final Map<String, Integer> residentNumbers = new TreeMap<>();
    private final List<Group> residents = new ArrayList<>();
    private final Map<String, Group> months = new TreeMap<>();
    private final Map<String, Map<String, long[]>> notes = new TreeMap<>();
    private final PriorityQueue<Look> first = new PriorityQueue<>(Collections.reverseOrder());
    private final Trouble.Counter unread = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter tooLong = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter failed = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter earlier = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter lost = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter errors = new Trouble.Counter(MOST_TOLD);
    private final Outturn.Counter outturn = new Outturn.Counter();
    private final WaiverReview.Counter waivers = new WaiverReview.Counter();
    private long judged;
    private long doubts;
    private long unnamed;
    /** Days as they are written, which sort as the days do. */
    private @Nullable String firstDay;

    private @Nullable String lastDay;

    /** {@code looks} is how many cases are kept that need a look first. */
    public Tally(Checker checker, int looks) {
        this(checker, looks, null);
    }

    /** The same beside an earlier audit; null where there is none. */
    public Tally(Checker checker, int looks, @Nullable LastAudit last) {
        this.last = last;
        this.criteria = checker.rulebase().catalogue().criteria();
        this.facts = new AskedFacts(checker);
        this.store = new CaseStore(criteria.size());
        this.ids = criteria.stream().map(Criterion::id).toList();
        this.looks = looks;
        this.endings = new long[criteria.size()][Ending.values().length];
        this.waived = new long[criteria.size()];
        for (Stage s : Stage.values()) {
            stages.put(s, new StageCount.Counter());
        }
    }

    /** Counts a row. An earlier state of a case is told, and counted nowhere else. */
    public void add(Audit.Done done) {
        CaseRow row = done.row();
        switch (row.kind()) {
            case UNREADABLE -> unread.add(row.source(), row.reason());
            case TOO_LONG -> tooLong.add(row.source(), row.reason());
            case FAILED -> failed.add(row.source(), row.reason());
            case JUDGED -> {
                if (row.superseded()) {
                    earlier.add(row.source(), row.id());
                } else {
                    judged(done);
                }
            }
        }
    }

    private void judged(Audit.Done done) {
        CaseRow row = done.row();
        for (int i = 0; i < row.endings().length; i++) {
            int e = row.endings()[i];
            if (e >= 0) {
                endings[i][e]++;
            }
        }
        row.waived().forEach(id -> waived[ids.indexOf(id)]++);
        row.notes().forEach(n -> count(notes.computeIfAbsent(n.kind(), k -> new TreeMap<>()), n.criterion()));
        row.errors().forEach(e -> errors.add(row.source(), e));
        if (!row.lost().isEmpty()) {
            lost.add(row.source(), String.join("; ", row.lost()));
        }
        doubts += row.doubts() > 0 ? 1 : 0;
        unnamed += row.resident().isEmpty() ? 1 : 0;
        Look look = Look.of(done, ids, since(row), judged++);
        Objects.requireNonNull(stages.get(row.reached())).add(look);
        int number = number(row.resident());
        int stage = row.reached().ordinal();
        residents.get(number).add(stage, row.endings(), look.stops() > 0);
        month(row).add(stage, row.endings(), look.stops() > 0);
        store.add(row, number, facts.missing(row));
        outturn.add(row.resident(), row.details().attained());
        waivers.add(row, residents.get(number).name(), row.count(Ending.STOP) + row.count(Ending.CAUTION));
        if (looks > 0 && (first.size() < looks || look.compareTo(first.peek()) < 0)) {
            first.add(look);
            if (first.size() > looks) {
                first.poll();
            }
        }
    }

    /** Warnings of a case that are new since the last audit; 0 where there is none. */
    private int since(CaseRow row) {
        if (last == null) {
            return 0;
        }
        LastAudit.Change change = last.of(row);
        fresh += change.fresh();
        gone += change.gone();
        newCases += change.known() ? 0 : 1;
        return change.fresh();
    }

    private static @Nullable LocalDate day(@Nullable String written) {
        return written == null ? null : LocalDate.parse(written);
    }

    private static int bits(long[] words) {
        int n = 0;
        for (long w : words) {
            n += Long.bitCount(w);
        }
        return n;
    }

    private int number(String resident) {
        String known = residentNumbers.containsKey(resident) || residents.size() < MOST_NAMES ? resident : OTHERS;
        Integer number = residentNumbers.get(known);
        if (number == null) {
            number = residents.size();
            residents.add(new Group(known, criteria.size()));
            residentNumbers.put(known, number);
        }
        return number;
    }

    private Group month(CaseRow row) {
        String name = "";
        if (row.day().length() >= 10) {
            name = row.day().substring(0, 7);
            firstDay = firstDay == null || row.day().compareTo(firstDay) < 0 ? row.day() : firstDay;
            lastDay = lastDay == null || row.day().compareTo(lastDay) > 0 ? row.day() : lastDay;
        }
        String known = months.containsKey(name) || months.size() < MOST_NAMES ? name : OTHERS;
        return months.computeIfAbsent(known, k -> new Group(k, criteria.size()));
    }

    private static void count(Map<String, long[]> counts, String name) {
        counts.computeIfAbsent(
                        counts.containsKey(name) || counts.size() < MOST_NAMES ? name : OTHERS, n -> new long[1])[0]++;
    }

    /** Facts that are missing anywhere, most frequent first. */
    private List<Gap> gaps(List<String> names) {
        List<Gap> gaps = new ArrayList<>();
        for (int f = 0; f < names.size(); f++) {
            int missing = 0;
            int asked = 0;
            for (Group g : residents) {
                missing += g.missing(f);
                asked += g.asked(f);
            }
            if (missing > 0) {
                gaps.add(new Gap(names.get(f), f, new Rate(missing, asked)));
            }
        }
        gaps.sort(Comparator.comparingLong((Gap g) -> -g.rate().count()).thenComparing(Gap::pointer));
        return gaps;
    }

    /** Counts facts over all cases, now that it is known which criterion may wait for which. */
    private GivenBySteps countFacts(AskedFacts.Known known) {
        residents.forEach(Group::forgetFacts);
        months.values().forEach(Group::forgetFacts);
        GivenBySteps given = new GivenBySteps(known.steps());
        long[] asked = new long[known.words()];
        long[] missing = new long[known.words()];
        Map<Integer, Group> monthOf = new HashMap<>();
        for (int i = 0; i < store.size(); i++) {
            store.asked(i, known.asked(), asked);
            store.missing(i, known.place(), missing);
            int nAsked = bits(asked);
            store.asked(i, nAsked);
            residents.get(store.resident(i)).addFacts(store.stage(i), asked, missing, nAsked, store.missing(i));
            monthOf.computeIfAbsent(store.day(i), this::month)
                    .addFacts(store.stage(i), asked, missing, nAsked, store.missing(i));
            given.add(asked, missing);
        }
        return given;
    }

    /** The month in which cases of a day were counted. */
    private Group month(int day) {
        String name = day == CaseStore.NO_DAY
                ? ""
                : LocalDate.ofEpochDay(day).toString().substring(0, 7);
        return Objects.requireNonNull(months.getOrDefault(name, months.get(OTHERS)), name);
    }

    /** What was counted so far. */
    public Summary summary() {
        List<CriterionCount> counts = new ArrayList<>();
        for (int i = 0; i < criteria.size(); i++) {
            Criterion c = criteria.get(i);
            long[] e = endings[i];
            counts.add(new CriterionCount(c.id(), c.title(), c.stage(), e[0], e[1], waived[i], e[2], e[3], e[4], e[5]));
        }
        List<StageCount> byStage = new ArrayList<>();
        stages.forEach((s, c) -> byStage.add(c.count(s)));
        List<Integer> named = residentNumbers.entrySet().stream()
                .filter(r -> Summary.named(r.getKey()))
                .map(Map.Entry::getValue)
                .toList();
        // of many cases each takes a good part of a second: side by side
        CompletableFuture<Trends> trends = CompletableFuture.supplyAsync(() -> Trends.of(
                store, residents, named, criteria.stream().map(Criterion::stage).toList()));
        AskedFacts.Known known = facts.known();
        GivenBySteps given = countFacts(known);
        return new Summary(
                judged,
                doubts,
                unnamed,
                byStage,
                counts,
                residentNumbers.values().stream().map(residents::get).toList(),
                Periods.of(months, criteria.size(), day(firstDay), day(lastDay)),
                gaps(known.names()),
                notes.entrySet().stream()
                        .map(n -> new Summary.Notes(n.getKey(), NamedCount.most(n.getValue())))
                        .toList(),
                first.stream().sorted().toList(),
                unread.all(),
                tooLong.all(),
                failed.all(),
                earlier.all(),
                errors.all(),
                lost.all(),
                Comparisons.of(store, residents, named, ids, known.names()),
                trends.join(),
                outturn.outturn(),
                waivers.review(),
                given.rates(),
                last == null ? Optional.empty() : Optional.of(new Summary.Since(newCases, fresh, gone)));
    }
}
