package dev.fairlead.audit.summary;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.rules.Criterion;
import dev.fairlead.rules.Ending;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Counts rows as they come, in memory that does not grow with their number; not safe between threads. */
public final class Tally {
    /**
     * Residents, missing facts and the like beyond this are counted under one name: somebody numbers cases where codes
     * are asked for.
     */
    private static final int MOST_NAMES = 5_000;

    private static final int MOST_TOLD = 200;
    private static final List<String> LISTS = List.of("/visits/", "/images/", "/landmarks/", "/waivers/");
    private static final Pattern ENTRY = Pattern.compile("^/(visits|images|landmarks|waivers)/\\d+");
    private static final Ending[] ENDINGS = Ending.values();
    static final String OTHERS = "(others)";

    private final List<Criterion> criteria;
    private final List<String> ids;
    private final int looks;
    private final long[][] endings;
    private final long[] waived;
    private final Map<Stage, StageCount.Counter> stages = new EnumMap<>(Stage.class);
    private final Map<String, Group> residents = new TreeMap<>();
    private final Map<String, Group> months = new TreeMap<>();
    private final Map<String, long[]> missing = new TreeMap<>();
    private final Map<String, Map<String, long[]>> notes = new TreeMap<>();
    private final PriorityQueue<Look> first = new PriorityQueue<>(Collections.reverseOrder());
    private final Trouble.Counter unread = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter tooLong = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter failed = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter duplicates = new Trouble.Counter(MOST_TOLD);
    private final Trouble.Counter errors = new Trouble.Counter(MOST_TOLD);
    private long judged;
    private long doubts;

    /** {@code looks} is how many cases are kept that need a look first. */
    public Tally(Catalogue catalogue, int looks) {
        this.criteria = catalogue.criteria();
        this.ids = criteria.stream().map(Criterion::id).toList();
        this.looks = looks;
        this.endings = new long[criteria.size()][Ending.values().length];
        this.waived = new long[criteria.size()];
        for (Stage s : Stage.values()) {
            stages.put(s, new StageCount.Counter());
        }
    }

    /** Counts a row. A later case of a pseudonym that was met before is told, and counted nowhere else. */
    public void add(Audit.Done done) {
        CaseRow row = done.row();
        switch (row.kind()) {
            case UNREADABLE -> unread.add(row.source(), row.reason());
            case TOO_LONG -> tooLong.add(row.source(), row.reason());
            case FAILED -> failed.add(row.source(), row.reason());
            case JUDGED -> {
                if (row.duplicate()) {
                    duplicates.add(row.source(), row.id());
                } else {
                    judged(done);
                }
            }
        }
    }

    private void judged(Audit.Done done) {
        CaseRow row = done.row();
        Group resident = group(residents, row.resident());
        Group month = group(months, row.day().length() >= 7 ? row.day().substring(0, 7) : "");
        for (int i = 0; i < row.endings().length; i++) {
            int e = row.endings()[i];
            if (e >= 0) {
                endings[i][e]++;
                resident.count(i, ENDINGS[e]);
                month.count(i, ENDINGS[e]);
            }
        }
        row.waived().forEach(id -> waived[ids.indexOf(id)]++);
        Set<String> waitedFor = new HashSet<>();
        for (List<String> pointers : row.missing().values()) {
            for (String p : pointers) {
                if (waitedFor.add(p)) {
                    count(missing, general(p));
                }
            }
        }
        row.notes().forEach(n -> count(notes.computeIfAbsent(n.kind(), k -> new TreeMap<>()), n.criterion()));
        row.errors().forEach(e -> errors.add(row.source(), e));
        doubts += row.doubts() > 0 ? 1 : 0;
        Look look = Look.of(done, ids, judged++);
        stages.get(row.stage()).add(look);
        if (looks > 0 && (first.size() < looks || look.compareTo(first.peek()) < 0)) {
            first.add(look);
            if (first.size() > looks) {
                first.poll();
            }
        }
    }

    private Group group(Map<String, Group> groups, String name) {
        String known = groups.containsKey(name) || groups.size() < MOST_NAMES ? name : OTHERS;
        Group g = groups.computeIfAbsent(known, n -> Group.of(n, criteria.size()));
        Group counted = new Group(g.name(), g.cases() + 1, g.judged(), g.warned());
        groups.put(known, counted);
        return counted;
    }

    private static void count(Map<String, long[]> counts, String name) {
        counts.computeIfAbsent(
                        counts.containsKey(name) || counts.size() < MOST_NAMES ? name : OTHERS, n -> new long[1])[0]++;
    }

    /** A pointer with entries of lists made alike. */
    static String general(String pointer) {
        for (String list : LISTS) {
            if (pointer.startsWith(list)) {
                return ENTRY.matcher(pointer).replaceFirst("/$1/*");
            }
        }
        return pointer;
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
        return new Summary(
                judged,
                doubts,
                byStage,
                counts,
                List.copyOf(residents.values()),
                Periods.of(months, criteria.size()),
                NamedCount.most(missing),
                notes.entrySet().stream()
                        .map(n -> new Summary.Notes(n.getKey(), NamedCount.most(n.getValue())))
                        .toList(),
                first.stream().sorted().toList(),
                unread.all(),
                tooLong.all(),
                failed.all(),
                duplicates.all(),
                errors.all());
    }
}
