package dev.fairlead.measure;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.BuccalSegment;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Space;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Answer;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** What must hold for the facts of any case. */
class FactPropertiesTest {
    /**
     * A choice of method with a stated default, not a fact of the child: without it the usual row of the table is read.
     */
    private static final String PERCENTILE = "/plan/percentile";

    private static List<CaseFact> facts(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.none()).facts();
    }

    private static Map<String, CaseValue> byName(CaseBuilder b) {
        Map<String, CaseValue> all = new HashMap<>();
        for (CaseFact f : facts(b)) {
            Knowns.of(f)
                    .forEach((name, k) -> all.put(
                            f.getClass().getSimpleName() + " " + f.place().pointer() + " "
                                    + f.place().words() + " " + name,
                            k));
        }
        return all;
    }

    @RepeatedTest(3)
    void removingAFactNeverMakesAnUnknownKnown(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        CaseBuilder b = SampleCase.full();
        List<String> pointers = new ArrayList<>(b.values().keySet());
        pointers.remove(PERCENTILE);
        vary(b, random);
        java.util.Collections.shuffle(pointers, random);
        Map<String, CaseValue> before = byName(b);
        for (String pointer : pointers) {
            Map<String, CaseValue> after = byName(b.without(pointer));
            after.forEach((name, k) -> {
                CaseValue then = before.get(name);
                if (then != null && then.applies() && !then.known() && k.known()) {
                    throw new AssertionError(name + " became known when " + pointer + " was removed");
                }
            });
            before.clear();
            before.putAll(after);
        }
    }

    /** Some facts that do not apply, some other values. */
    private static void vary(CaseBuilder b, Random random) {
        String[] mayNotApply = {
            "/child/population",
            "/bench/misfitRms",
            "/bench/misfitWorst",
            "/wire/modulus",
            "/wire/proofStrength",
            "/visits/0/gauge",
            "/visits/1/gauge",
            "/visits/2/gauge",
            "/films/secondMolarAngleLeft",
            "/holding/impression",
            "/holding/cemented",
            "/holding/debonded",
            "/headFilm/tippingRadius",
            "/visits/1/resorption",
            "/insertion/left/underHook"
        };
        for (String p : mayNotApply) {
            if (random.nextInt(3) == 0) {
                b.set(p, CaseBuilder.NOT_APPLICABLE);
            }
        }
        String[] sides = {"both", "left", "right", "none"};
        for (int i = 0; i < 3; i++) {
            b.set("/visits/" + i + "/activated", sides[random.nextInt(4)]);
        }
        String[] states = {"primary-present", "erupted", "unerupted", "missing"};
        for (int n : new int[] {34, 35, 44, 45, 75, 85, 41}) {
            b.set("/teeth/" + n + "/state", states[random.nextInt(4)]);
        }
        if (random.nextBoolean()) {
            b.set("/teeth/33/width", 6.9).set("/teeth/34/width", 7.0).set("/teeth/35/width", 7.1);
        }
        if (random.nextBoolean()) {
            b.set("/wire/section", "rectangular");
        }
        if (random.nextBoolean()) {
            b.set("/teeth/42/width", 4.0).set("/teeth/32/width", 4.1);
        }
    }

    @Test
    void unknownFactsNameOnlyFactsThatAreMissing() {
        Random random = new Random(7);
        for (int run = 0; run < 12; run++) {
            CaseBuilder b = SampleCase.full();
            vary(b, random);
            for (String pointer : b.values().keySet()) {
                if (random.nextInt(3) == 0) {
                    b.without(pointer);
                }
            }
            Map<String, Object> there = b.values();
            byName(b)
                    .forEach((name, k) -> assertThat(k.missing()).as(name).allMatch(p -> {
                        Object value = there.get(p);
                        boolean readOnce = name.contains(" duplicate") && !(value instanceof double[]);
                        // without a beam model a gauge is asked for, and says nothing of stress
                        boolean noModel = p.endsWith("/gauge");
                        return value == null || value == CaseBuilder.NOT_APPLICABLE || readOnce || noModel;
                    }));
        }
    }

    @Test
    void largerIncisorsNeverNeedLessRoom() {
        CaseBuilder b = SampleCase.full();
        b.drop("/images/");
        double last = 0;
        double lastTotal = -100;
        for (double li = 17; li < 30; li += 0.05) {
            b.incisors(li / 4, li / 4, li / 4, li / 4);
            List<CaseFact> facts = facts(b);
            double required = facts.stream()
                    .filter(BuccalSegment.class::isInstance)
                    .map(BuccalSegment.class::cast)
                    .findFirst()
                    .orElseThrow()
                    .required()
                    .value();
            double total = facts.stream()
                    .filter(Space.class::isInstance)
                    .map(Space.class::cast)
                    .findFirst()
                    .orElseThrow()
                    .totalShortage()
                    .value();
            assertThat(required).isGreaterThanOrEqualTo(last);
            assertThat(total).isGreaterThanOrEqualTo(lastTotal);
            last = required;
            lastTotal = total;
        }
    }

    @Test
    void aMirroredCaseGivesMirroredFacts() {
        for (int seed = 0; seed < 8; seed++) {
            Random random = new Random(seed);
            CaseBuilder b = SampleCase.full();
            vary(b, random);
            for (String pointer : b.values().keySet()) {
                if (random.nextInt(6) == 0) {
                    b.without(pointer);
                }
            }
            Map<String, CaseValue> mirrored = byName(Mirror.of(b));
            byName(b).forEach((name, k) -> {
                CaseValue there = mirrored.get(Mirror.name(name));
                assertThat(there).as(name).isNotNull();
                assertThat(same(k, there))
                        .as("%s: %s against %s", name, k, there)
                        .isTrue();
            });
        }
    }

    private static boolean same(CaseValue a, CaseValue b) {
        if (a.known() != b.known() || a.applies() != b.applies()) {
            return false;
        }
        if (!a.known()) {
            return a.missing().stream()
                    .map(Mirror::pointer)
                    .sorted()
                    .toList()
                    .equals(b.missing().stream().sorted().toList());
        }
        return a instanceof Measured m
                ? Math.abs(m.value() - ((Measured) b).value()) < 1e-9 && Math.abs(m.sd() - ((Measured) b).sd()) < 1e-9
                : ((Answer) a).yes() == ((Answer) b).yes();
    }
}
