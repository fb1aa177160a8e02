package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.BuccalSegment;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.arch.PositionAnalysis;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.space.SpaceAnalysis;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.verdict.JudgementText;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * On whole cases: to plan less or more than a side needs, by more than the limits, never ends without a warning,
 * whatever is planned on the other side.
 */
class PlannedAmountsTest {
    private static final int COHORT = 150;
    private static final double[] SHARES = {0, 0.25, 0.5, 0.8, 1, 1.2, 1.5, 2, 3};
    /** Limits of the criterion, mm, and what lies just beyond them. */
    private static final double SHORT = -0.5;

    private static final double OVER = 1.0;
    private static final double BEYOND = 0.01;

    private final Checker checker = new Checker(ProjectRules.rulebase(), Calculations.full());
    private final CheckOptions options =
            CheckOptions.USUAL.at(Stage.INDICATION).withoutWorkings().withoutForces();

    @Test
    void aPlanThatIsFarFromTheNeedOfASideAlwaysWarns() {
        List<Case> cases = WholeCases.demos();
        cases.addAll(WholeCases.cohort(COHORT));
        AtomicInteger far = new AtomicInteger();
        AtomicInteger near = new AtomicInteger();
        cases.parallelStream().forEach(c -> {
            Double left = need(c, Side.LEFT);
            Double right = need(c, Side.RIGHT);
            for (double l : amounts(left)) {
                for (double r : amounts(right)) {
                    Case planned = Edit.set(Edit.set(c, "/plan/advanceLeft", l), "/plan/advanceRight", r);
                    Status ends = JudgementText.result(checker.judge(planned, options), "plan-meets-need")
                            .status();
                    boolean warns = off(l, left) || off(r, right);
                    if (warns) {
                        far.incrementAndGet();
                        assertThat(ends)
                                .as("%s with %s and %s mm where %s and %s are needed", c.id(), l, r, left, right)
                                .isEqualTo(Status.WARN);
                    } else if (left != null && right != null) {
                        near.incrementAndGet();
                        assertThat(ends).as(c.id()).isNotEqualTo(Status.WARN);
                    } else {
                        assertThat(ends).as(c.id()).isNotEqualTo(Status.PASS);
                    }
                }
            }
        });
        assertThat(far.get()).isGreaterThan(10_000);
        assertThat(near.get()).isGreaterThan(1_000);
    }

    /**
     * The error of what the plan gives beyond the need, without an arch: that of the shortage, that of the plan, and
     * the need's share of the spread between children in what a millimetre of advance gains (0.1125 of 0.866 mm a
     * side).
     */
    @Test
    void theErrorHoldsShortagePlanAndTheSpreadOfWhatAMillimetreGains() {
        CaseBuilder whole = SampleCase.full();
        Case flat = whole.without("/arch/molarWidth").build();
        BuccalSegment left = segment(flat);
        Measured planned = flat.plan().advanceLeft();
        double need = left.shortage().value();
        assertThat(need).isPositive();
        double gain = need * 0.1125 / (Math.sqrt(3) / 2);
        assertThat(left.planSpare().known()).isFalse();
        assertThat(left.planSpareSoFar().value()).isCloseTo(planned.value() - need, within(1e-9));
        assertThat(left.planSpareSoFar().sd())
                .isCloseTo(
                        Math.sqrt(Math.pow(left.shortage().sd(), 2) + Math.pow(planned.sd(), 2) + gain * gain),
                        within(1e-9));
        BuccalSegment byArch = segment(SampleCase.full().build());
        assertThat(byArch.planSpareSoFar().sd()).isEqualTo(byArch.planSpare().sd());
        assertThat(byArch.planSpareSoFar().sd()).isPositive();
    }

    private BuccalSegment segment(Case c) {
        return checker.facts(c, options).stream()
                .filter(f -> f instanceof BuccalSegment b && b.side() == Side.LEFT)
                .map(BuccalSegment.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static boolean off(double planned, Double need) {
        return need != null && (planned - need < SHORT - 1e-6 || planned - need > OVER + 1e-6);
    }

    private static List<Double> amounts(Double need) {
        List<Double> all = new ArrayList<>();
        double of = need == null ? 2 : need;
        for (double share : SHARES) {
            all.add(of * share);
        }
        for (double d : new double[] {SHORT - BEYOND, SHORT + BEYOND, OVER - BEYOND, OVER + BEYOND, 4}) {
            all.add(Math.max(0, of + d));
        }
        return all;
    }

    /** On this child's arch; without one two millimetres of arch for each millimetre of advance. Null if unknown. */
    private Double need(Case c, Side side) {
        Readings readings = new Readings(c);
        Measured byArch = PositionAnalysis.needed(
                readings, SpaceAnalysis.of(readings, false).side(side), PatientArch.of(c));
        for (CaseFact f : checker.facts(c, options)) {
            if (f instanceof BuccalSegment b && b.side() == side) {
                Measured need = byArch.known() ? byArch : b.shortage();
                return need.known() ? Math.max(0, need.value()) : null;
            }
        }
        throw new AssertionError();
    }
}
