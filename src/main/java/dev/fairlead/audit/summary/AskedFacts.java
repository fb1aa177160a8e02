package dev.fairlead.audit.summary;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.verdict.Ending;
import dev.fairlead.rules.verdict.Endings;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
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
    private final Map<String, Integer> known = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final long[][] asked;
    private final Stage[] stages;

    AskedFacts(Checker checker) {
        List<Criterion> all = checker.rulebase().catalogue().criteria();
        for (Criterion c : all) {
            criteria.put(c.id(), criteria.size());
        }
        asked = new long[all.size()][4];
        stages = all.stream().map(Criterion::stage).toArray(Stage[]::new);
        for (String text : EMPTY_CASES) {
            Case c = CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "empty", CaseFormat.JSON)
                    .value()
                    .orElseThrow();
            Endings e = checker.endings(c, CheckOptions.USUAL.withoutForces());
            for (int i = 0; i < asked.length; i++) {
                for (String pointer : e.missing().get(i)) {
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
                    : known.computeIfAbsent(general(pointer), name -> {
                        names.add(name);
                        return names.size() - 1;
                    });
            byPointer.put(pointer, fact);
        }
        if (fact >= 0) {
            int word = fact >> 6;
            if (word >= asked[criterion].length) {
                asked[criterion] = Arrays.copyOf(asked[criterion], word + 1);
            }
            asked[criterion][word] |= 1L << fact;
        }
        return fact;
    }

    /** Pointers of the facts by number, with {@code *} for entries of lists. */
    List<String> names() {
        return names;
    }

    /** The facts that are missing in a case, each once, as bits. */
    long[] missing(CaseRow row) {
        long[] bits = new long[(names.size() >> 6) + 2];
        for (Map.Entry<String, List<String>> m : row.missing().entrySet()) {
            int criterion = Objects.requireNonNull(criteria.get(m.getKey()), m.getKey());
            for (String pointer : m.getValue()) {
                int fact = ask(criterion, pointer);
                if (fact >= 0) {
                    bits = fact >> 6 < bits.length ? bits : Arrays.copyOf(bits, (fact >> 6) + 1);
                    bits[fact >> 6] |= 1L << fact;
                }
            }
        }
        return bits;
    }

    /** The facts that a case is asked for, as bits; to be called after {@link #missing}. */
    long[] asked(CaseRow row) {
        long[] bits = new long[(names.size() >> 6) + 1];
        byte[] endings = row.endings();
        for (int i = 0; i < endings.length; i++) {
            if (endings[i] >= 0 && endings[i] != Ending.DOES_NOT_APPLY.ordinal()) {
                long[] of = asked[i];
                for (int w = 0; w < Math.min(of.length, bits.length); w++) {
                    bits[w] |= of[w];
                }
            }
        }
        return bits;
    }

    /** The step that asks for a fact first. */
    Stage step(int fact) {
        Stage first = Stage.HOLDING;
        for (int i = 0; i < asked.length; i++) {
            boolean asks = fact >> 6 < asked[i].length && (asked[i][fact >> 6] & 1L << fact) != 0;
            first = asks && stages[i].compareTo(first) < 0 ? stages[i] : first;
        }
        return first;
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
