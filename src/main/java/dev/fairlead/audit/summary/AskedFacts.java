package dev.fairlead.audit.summary;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judgement;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * Which facts a case is asked for: every fact that a criterion which applies to it could wait for. Learnt from what an
 * empty case waits for, and from what real ones turn out to wait for. Entries of lists are one fact ({@code *}): visits
 * are not cases.
 */
final class AskedFacts {
    private static final String[] EMPTY_CASES = {
        "{\"fairlead\":1,\"id\":\"empty\",\"stage\":\"holding\",\"visits\":[{},{}]}",
        "{\"fairlead\":1,\"id\":\"empty\",\"stage\":\"holding\",\"visits\":["
                + "{\"activated\":\"both\"},{\"activated\":\"both\"}]}"
    };
    private static final Pattern ENTRY = Pattern.compile("^/(visits|images|landmarks|pictured|waivers)/\\d+");
    /** What an option leaves out is no gap. */
    private static final String LEFT_OUT = "Omitted";

    private final Map<String, Integer> criteria = new HashMap<>();
    private final Map<String, Integer> byPointer = new HashMap<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final BitSet[] asked;
    private final Stage[] stages;

    AskedFacts(Checker checker) {
        List<Criterion> all = checker.rulebase().catalogue().criteria();
        for (Criterion c : all) {
            criteria.put(c.id(), criteria.size());
        }
        asked = new BitSet[all.size()];
        Arrays.setAll(asked, c -> new BitSet());
        stages = all.stream().map(Criterion::stage).toArray(Stage[]::new);
        for (String text : EMPTY_CASES) {
            Case c = CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "empty", CaseFormat.JSON)
                    .value()
                    .orElseThrow();
            Judgement judgement = checker.judge(c, CheckOptions.USUAL.withoutForces());
            for (int i = 0; i < asked.length; i++) {
                CriterionResult r = judgement.result(i);
                for (String pointer : r.ending() == Ending.NOT_ASSESSED ? r.missing() : List.<String>of()) {
                    ask(i, pointer);
                }
            }
        }
    }

    private int ask(int criterion, String pointer) {
        Integer fact = byPointer.get(pointer);
        if (fact == null) {
            fact = pointer.endsWith(LEFT_OUT)
                    ? Integer.valueOf(-1)
                    : numbers.computeIfAbsent(general(pointer), name -> {
                        names.add(name);
                        return names.size() - 1;
                    });
            byPointer.put(pointer, fact);
        }
        if (fact >= 0) {
            asked[criterion].set(fact);
        }
        return fact;
    }

    /** The facts that are missing in a case, each once, by the number under which they became known. */
    char[] missing(CaseRow row) {
        BitSet facts = new BitSet();
        for (Map.Entry<String, List<String>> m : row.missing().entrySet()) {
            int criterion = Objects.requireNonNull(criteria.get(m.getKey()), m.getKey());
            for (String pointer : m.getValue()) {
                int fact = ask(criterion, pointer);
                if (fact >= 0) {
                    facts.set(fact);
                }
            }
        }
        char[] numbers = new char[facts.cardinality()];
        int at = 0;
        for (int f = facts.nextSetBit(0); f >= 0; f = facts.nextSetBit(f + 1)) {
            numbers[at++] = (char) f;
        }
        return numbers;
    }

    /**
     * What is known once all cases were seen, in the order of the names: whatever was learnt late holds for the cases
     * before it too, so that no count depends on the order of the cases.
     *
     * @param names pointers of the facts, with {@code *} for entries of lists
     * @param place of a fact in that order, by the number under which it became known
     * @param asked by criterion, the facts that it could wait for, as bits
     * @param steps by stage, the facts that it is the first to ask for, as bits
     */
    record Known(List<String> names, int[] place, long[][] asked, long[][] steps) {
        /** So many words hold a bit for each fact. */
        int words() {
            return words(names.size());
        }

        private static int words(int facts) {
            return (facts + Long.SIZE - 1) / Long.SIZE;
        }
    }

    /** What is known by now. */
    Known known() {
        List<String> sorted = names.stream().sorted().toList();
        int[] place = names.stream()
                .mapToInt(n -> Collections.binarySearch(sorted, n))
                .toArray();
        int words = Known.words(place.length);
        long[][] of = new long[asked.length][words];
        long[][] steps = new long[Stage.values().length][words];
        for (int f = 0; f < place.length; f++) {
            Stage first = Stage.HOLDING;
            for (int c = 0; c < asked.length; c++) {
                if (asked[c].get(f)) {
                    set(of[c], place[f]);
                    first = stages[c].compareTo(first) < 0 ? stages[c] : first;
                }
            }
            set(steps[first.ordinal()], place[f]);
        }
        return new Known(sorted, place, of, steps);
    }

    private static void set(long[] bits, int at) {
        bits[at / Long.SIZE] |= 1L << at;
    }

    /** A pointer with entries of lists made alike. */
    static String general(String pointer) {
        return pointer.startsWith("/visits/")
                        || pointer.startsWith("/images/")
                        || pointer.startsWith("/landmarks/")
                        || pointer.startsWith("/pictured/")
                        || pointer.startsWith("/waivers/")
                ? ENTRY.matcher(pointer).replaceFirst("/$1/*")
                : pointer;
    }
}
