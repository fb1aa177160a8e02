package dev.fairlead.check;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.facts.Wire;
import dev.fairlead.findings.Certainty;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.uncertainty.Compared;
import dev.fairlead.measure.uncertainty.Flips;
import dev.fairlead.measure.uncertainty.Repeat;
import dev.fairlead.measure.uncertainty.Simulation;
import dev.fairlead.measure.uncertainty.VariantJudge;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Rulebase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Works out how sure the findings of cases are. Learns as it goes, so one is kept for many cases; safe to share between
 * threads.
 */
public final class Doubts {
    /** Chances below this are not told. */
    private static final double LEAST = 1e-6;

    private final Rulebase rulebase;
    private final Calculations parts;
    private final Judge judge;
    private final BitSet measured;

    public Doubts(Rulebase rulebase, Calculations parts) {
        this.rulebase = rulebase;
        this.parts = parts;
        this.judge = rulebase.judge();
        this.measured = measured(rulebase.catalogue().criteria());
    }

    /** As the options say; at least by first-order propagation. */
    public Doubt of(Case c, CheckOptions options) {
        Stage reached = options.reach(c).judged();
        return of(
                c,
                Measures.of(c, options.reach(c).day(), Workbook.none(), parts(reached))
                        .facts(),
                options);
    }

    /** The same where the facts of the case are already known. */
    Doubt of(Case c, List<CaseFact> facts, CheckOptions options) {
        Stage reached = options.reach(c).judged();
        Doubting how = options.doubting();
        List<Compared> compared = compared(facts, reached);
        Flips analytic = new Flips(compared);
        List<String> ids = judge.criteria();
        return doubt(
                reached,
                compared,
                analytic,
                how,
                !how.simulates()
                        ? Optional.empty()
                        : Optional.of(Simulation.of(
                                c,
                                outcomes(options.reach(c).day(), reached, near(c, reached, how, compared)),
                                measurements -> analytic.over(ids, measurements),
                                how.draws(),
                                how.seed())));
    }

    /**
     * Every variant of the case is measured and judged anew, its forces near those of the case; the order is that of
     * the catalogue.
     */
    public VariantJudge outcomes(Case base, Optional<LocalDate> day, Stage reached) {
        return outcomes(day, reached, parts(reached).near(base));
    }

    private VariantJudge outcomes(Optional<LocalDate> day, Stage reached, Calculations near) {
        return variant -> {
            Ending[] endings = judge.judge(
                            Measures.of(variant, day, Workbook.none(), near).facts(), reached, measured)
                    .endings();
            int[] numbers = new int[endings.length];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = endings[i] == null ? -1 : endings[i].ordinal();
            }
            return numbers;
        };
    }

    /** Where draws only correct and no number of the wire comes near a limit, its line is not laid anew. */
    private Calculations near(Case c, Stage reached, Doubting how, List<Compared> compared) {
        Calculations near = parts(reached).near(c);
        boolean wire = compared.stream().anyMatch(v -> criterion(v.criterion()).about() == Wire.class);
        return how.corrects() && !wire ? near.alongTheArchOf(c) : near;
    }

    private Criterion criterion(String id) {
        return Objects.requireNonNull(rulebase.catalogue().criterion(id), id);
    }

    /** Criteria that look at a quantity: errors of measurement turn no other. */
    private static BitSet measured(List<Criterion> criteria) {
        BitSet measured = new BitSet();
        for (int i = 0; i < criteria.size(); i++) {
            for (Need need : criteria.get(i).needs()) {
                if (need.type() == Measured.class) {
                    measured.set(i);
                }
            }
        }
        return measured;
    }

    /** Forces are judged from the bench on; before, the beam model would work for nothing. */
    private Calculations parts(Stage reached) {
        return reached.hasReached(Stage.BENCH) ? parts : parts.withoutForces();
    }

    private Doubt doubt(
            Stage reached, List<Compared> compared, Flips analytic, Doubting how, Optional<Simulation> drawn) {
        List<Doubt.Flip> flips = new ArrayList<>();
        double expected = 0;
        List<String> ids = judge.criteria();
        for (int i = 0; i < ids.size(); i++) {
            if (reached.hasReached(criterion(ids.get(i)).stage())) {
                Doubt.Flip flip = flip(ids.get(i), i, analytic.of(ids.get(i)), how, drawn);
                flips.add(flip);
                expected += flip.chance();
            }
        }
        return new Doubt(
                flips,
                expected,
                compared,
                Repeat.ranking(analytic),
                drawn.map(s ->
                        new Certainty.Drawn(s.draws(), s.seed(), s.pointers().size())));
    }

    /**
     * Draws that only correct add what they find beyond what first order finds in the same draws: nothing where it
     * holds, so that few draws will do (a control variate).
     */
    private static Doubt.Flip flip(String id, int i, double analytic, Doubting how, Optional<Simulation> drawn) {
        if (drawn.isEmpty()) {
            return new Doubt.Flip(id, analytic, OptionalDouble.empty(), analytic);
        }
        double share = drawn.get().flips()[i];
        double corrected =
                Math.max(0, Math.min(1, analytic + share - drawn.get().firstOrder()[i]));
        return new Doubt.Flip(id, analytic, OptionalDouble.of(share), how.corrects() ? corrected : share);
    }

    /** A value near enough to a threshold to matter, and its fact with the value just beyond. */
    private record Near(int criterion, CaseFact fact, CaseFact beyond, Compared compared) {}

    /**
     * All values of all criteria beside the thresholds that they may be held against, where an error could carry them
     * across.
     */
    public List<Compared> compared(List<CaseFact> facts, Stage reached) {
        Ending[] now = judge.judge(facts, reached).endings();
        Map<Class<?>, List<CaseFact>> byType = new HashMap<>();
        facts.forEach(f ->
                byType.computeIfAbsent(f.getClass(), t -> new ArrayList<>()).add(f));
        List<Near> near = new ArrayList<>();
        for (int i = 0; i < now.length; i++) {
            if (now[i] != null && now[i] != Ending.FAILED) {
                Criterion c = rulebase.catalogue().criteria().get(i);
                for (CaseFact fact : byType.getOrDefault(c.about(), List.of())) {
                    near(c, i, fact, near);
                }
            }
        }
        // each rule looks at one fact: asked of all at once, the engine tells of each, and what it tells is kept
        judge.judge(near.stream().map(Near::beyond).toList(), reached);
        List<Compared> compared = new ArrayList<>();
        for (Near n : near) {
            BitSet wanted = new BitSet();
            wanted.set(n.criterion());
            List<CaseFact> variant = new ArrayList<>(byType.get(n.fact().getClass()));
            variant.replaceAll(f -> f == n.fact() ? n.beyond() : f);
            Ending then = judge.judge(variant, reached, wanted).endings()[n.criterion()];
            compared.add(n.compared().deciding(then != now[n.criterion()]));
        }
        return List.copyOf(compared);
    }

    private void near(Criterion c, int criterion, CaseFact fact, List<Near> near) {
        for (Need need : c.needs()) {
            if (!(need.of(fact) instanceof Measured m) || !m.known()) {
                continue;
            }
            for (String name : c.limits()) {
                Threshold threshold = rulebase.catalogue().threshold(name);
                Limit limit = threshold.limit();
                if (m.unit() == limit.unit() && Compared.flipWithModels(m, limit) > LEAST) {
                    String place = fact.place().pointer() + ' ' + fact.place().words();
                    near.add(new Near(
                            criterion,
                            fact,
                            beyond(c, fact, m, across(threshold, m)),
                            new Compared(c.id(), place, need.component(), m, limit, false)));
                }
            }
        }
    }

    /**
     * The fact with a value moved, and with it all others of the criterion that are the same number: a value and its
     * steepest form, equal where all is measured, are never apart, and one alone would change no ending.
     */
    private static CaseFact beyond(Criterion c, CaseFact fact, Measured moved, Measured to) {
        CaseFact beyond = fact;
        for (Need need : c.needs()) {
            if (need.of(fact) instanceof Measured m
                    && m.known()
                    && m.unit() == moved.unit()
                    && Math.abs(m.value() - moved.value()) <= Measured.ROUNDING) {
                beyond = FactEdit.with(beyond, need.component(), to);
            }
        }
        return beyond;
    }

    /** The value just on the other side of a threshold. */
    private static Measured across(Threshold threshold, Measured m) {
        Limit limit = threshold.limit();
        double step = 1e-6 * Math.max(1, Math.abs(limit.value()));
        // a value at the limit counts to one side of it or the other: whichever it is, the step leads away from there
        boolean over = limit.inclusive() == (threshold.bound() == Threshold.Bound.LOWER)
                ? m.value() >= limit.value() - Measured.ROUNDING
                : m.value() > limit.value() + Measured.ROUNDING;
        return m.plus(limit.value() - m.value() + (over ? -step : step));
    }
}
