package dev.fairlead.rules.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.Bite;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.guard.ProjectRules;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Which facts count as alike: those of one state, one unit and one side of each limit, and no others. */
class RememberedFactsTest {
    /** Two lengths, and two limits: 0 and 1 mm. */
    private static final Criterion OVERJET =
            Objects.requireNonNull(ProjectRules.rulebase().catalogue().criterion("overjet-after"));

    private static final Limits LIMITS = ProjectRules.rulebase().catalogue().limits();

    /**
     * Every state that can be told apart: under, at, between, at and over the two limits, in two units, or not at all.
     */
    private static List<Measured> states() {
        List<Measured> states = new ArrayList<>(List.of(Measured.unknown("/x"), Measured.notApplicable()));
        for (Unit unit : List.of(Unit.MM, Unit.DEGREE)) {
            for (double value : new double[] {-1, 0, 0.5, 1, 2}) {
                states.add(Measured.exact(value, unit));
            }
        }
        return states;
    }

    private static CaseValue[] fact(Criterion c, Measured... needed) {
        CaseValue[] fact = new CaseValue[40];
        for (int i = 0; i < needed.length; i++) {
            fact[c.needs().get(i).at()] = needed[i];
        }
        return fact;
    }

    private static Criterion needing(List<Need> needs) {
        return new Criterion(
                "overjet-after",
                OVERJET.stage(),
                OVERJET.title(),
                OVERJET.asks(),
                OVERJET.why(),
                OVERJET.about(),
                needs,
                OVERJET.passes(),
                OVERJET.reasons(),
                OVERJET.exemptions(),
                OVERJET.thresholds(),
                OVERJET.sources(),
                OVERJET.dispute());
    }

    @Test
    void factsThatDifferInStateUnitOrSideAreKeptApart() {
        Memo<String> memo = new Memo<>(OVERJET, LIMITS, false);
        for (Measured a : states()) {
            for (Measured b : states()) {
                assertThat(memo.of(fact(OVERJET, a, b))).isNull();
                memo.keep(fact(OVERJET, a, b), a + " " + b);
            }
        }
        for (Measured a : states()) {
            for (Measured b : states()) {
                assertThat(memo.of(fact(OVERJET, a, b))).isEqualTo(a + " " + b);
            }
        }
        assertThat(memo.size()).isEqualTo(states().size() * states().size());
    }

    @Test
    void whatRoundingAloneKeepsFromALimitIsAtIt() {
        Memo<String> memo = new Memo<>(OVERJET, LIMITS, false);
        Measured other = Measured.exact(2, Unit.MM);
        memo.keep(fact(OVERJET, Measured.exact(1, Unit.MM), other), "at");
        assertThat(memo.of(fact(OVERJET, Measured.exact(1 - Measured.ROUNDING, Unit.MM), other)))
                .isEqualTo("at");
        assertThat(memo.of(fact(OVERJET, Measured.exact(1 + Measured.ROUNDING, Unit.MM), other)))
                .isEqualTo("at");
        assertThat(memo.of(fact(OVERJET, Measured.exact(1 + 2 * Measured.ROUNDING, Unit.MM), other)))
                .isNull();
        assertThat(memo.of(fact(OVERJET, Measured.exact(1 - 2 * Measured.ROUNDING, Unit.MM), other)))
                .isNull();
    }

    private static int kept(Criterion c, Limits limits, boolean off) {
        Memo<String> memo = new Memo<>(c, limits, off);
        memo.keep(fact(c, states().get(2), states().get(3)), "x");
        return memo.size();
    }

    @Test
    void nothingIsKeptWhereThatIsOffALimitIsNotThereOrFactsAreTooManyToTellApart() {
        assertThat(kept(OVERJET, LIMITS, false)).isEqualTo(1);
        assertThat(kept(OVERJET, LIMITS, true)).isZero();
        assertThat(kept(OVERJET, new Limits(Map.of()), false)).isZero();
        // eleven lengths of so many units and nine sides are more than a long number counts
        Criterion many = needing(Collections.nCopies(11, OVERJET.needs().get(0)));
        assertThat(kept(many, LIMITS, false)).isZero();
    }

    @Test
    void noMoreIsKeptThanThereIsRoomFor() {
        List<Need> needs = new ArrayList<>();
        for (String component : List.of("overjetAfter", "overjetSoFar", "overbiteAfter", "anb")) {
            needs.add(Objects.requireNonNull(Need.of(Bite.class, component), component));
        }
        Criterion four = needing(needs);
        Memo<Integer> memo = new Memo<>(four, LIMITS, false);
        int n = 0;
        for (Measured a : states()) {
            for (Measured b : states()) {
                for (Measured c : states()) {
                    for (Measured d : states()) {
                        memo.keep(fact(four, a, b, c, d), n++);
                    }
                }
            }
        }
        assertThat(n).isEqualTo(20_736);
        assertThat(memo.size()).isEqualTo(20_000);
    }
}
