package dev.fairlead.check;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.findings.Certainty;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Workbook;
import dev.fairlead.measure.part.Parts;
import dev.fairlead.measure.uncertainty.Compared;
import dev.fairlead.measure.uncertainty.Flips;
import dev.fairlead.measure.uncertainty.Outcomes;
import dev.fairlead.measure.uncertainty.Repeat;
import dev.fairlead.measure.uncertainty.Simulation;
import dev.fairlead.model.Case;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.Ending;
import dev.fairlead.rules.FactEdit;
import dev.fairlead.rules.Need;
import dev.fairlead.rules.QuickJudge;
import dev.fairlead.rules.Rulebase;
import dev.fairlead.rules.Term;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private final Parts parts;
    private final QuickJudge judge;

    public Doubts(Rulebase rulebase, Parts parts) {
        this.rulebase = rulebase;
        this.parts = parts;
        this.judge = rulebase.quickJudge();
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
        return doubt(
                facts,
                reached,
                !how.simulates()
                        ? Optional.empty()
                        : Optional.of(Simulation.of(
                                c, outcomes(c, options.reach(c).day(), reached), how.draws(), how.seed())));
    }

    /**
     * Every variant of the case is measured and judged anew, its forces near those of the case; the order is that of
     * the catalogue.
     */
    public Outcomes outcomes(Case base, Optional<LocalDate> day, Stage reached) {
        Parts near = parts(reached).near(base);
        return variant -> {
            Ending[] endings = judge.endings(
                    Measures.of(variant, day, Workbook.none(), near).facts(), reached);
            int[] numbers = new int[endings.length];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = endings[i] == null ? -1 : endings[i].ordinal();
            }
            return numbers;
        };
    }

    /** Forces are judged from activation on; before, the beam model would work for nothing. */
    private Parts parts(Stage reached) {
        return reached.hasReached(Stage.ACTIVATION) ? parts : parts.withoutForces();
    }

    private Doubt doubt(List<CaseFact> facts, Stage reached, Optional<Simulation> drawn) {
        List<Compared> compared = compared(facts, reached);
        Flips analytic = new Flips(compared);
        List<Doubt.Flip> flips = new ArrayList<>();
        double expected = 0;
        List<String> ids = judge.criteria();
        for (int i = 0; i < ids.size(); i++) {
            if (reached.hasReached(rulebase.catalogue().criterion(ids.get(i)).stage())) {
                Doubt.Flip flip = new Doubt.Flip(
                        ids.get(i),
                        analytic.of(ids.get(i)),
                        drawn.isEmpty()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(drawn.get().flips()[i]));
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

    /** A value near enough to a threshold to matter, and what it would be just beyond. */
    private record Near(int criterion, int place, CaseFact fact, Need need, Measured beyond, Compared compared) {
        CaseFact factBeyond() {
            return FactEdit.with(fact, need.component(), beyond);
        }
    }

    /**
     * All values of all criteria beside the thresholds that they are held against, where an error could carry them
     * across.
     */
    public List<Compared> compared(List<CaseFact> facts, Stage reached) {
        QuickJudge.Around around = judge.around(facts);
        Ending[] now = around.endings(reached);
        List<Near> near = new ArrayList<>();
        for (int i = 0; i < now.length; i++) {
            if (now[i] != null && now[i] != Ending.FAILED) {
                near(around, i, near);
            }
        }
        boolean askedAll = false;
        List<Compared> compared = new ArrayList<>();
        for (Near n : near) {
            Ending then = around.ending(n.criterion(), n.place(), n.need(), n.beyond());
            if (then == null && !askedAll) {
                // each rule looks at one fact: asked of all at once, the engine tells of each, and what it tells is
                // kept
                judge.endings(near.stream().map(Near::factBeyond).toList(), reached);
                askedAll = true;
                then = around.ending(n.criterion(), n.place(), n.need(), n.beyond());
            }
            compared.add(n.compared()
                    .deciding((then != null ? then : around.asked(n.criterion(), n.fact(), n.factBeyond(), reached))
                            != now[n.criterion()]));
        }
        return List.copyOf(compared);
    }

    private void near(QuickJudge.Around around, int criterion, List<Near> near) {
        String id = judge.criteria().get(criterion);
        List<CaseFact> facts = around.about(criterion);
        List<Term> terms = compares(id);
        for (int place = 0; place < facts.size(); place++) {
            for (Term t : terms) {
                Limit limit = rulebase.limits().of(t.limit());
                if (around.value(criterion, place, t.need()) instanceof Measured m
                        && m.known()
                        && Compared.flipWithModels(m, limit) > LEAST) {
                    CaseFact fact = facts.get(place);
                    near.add(new Near(
                            criterion,
                            place,
                            fact,
                            t.need(),
                            across(t, m, limit),
                            new Compared(
                                    id,
                                    fact.place().pointer() + ' ' + fact.place().words(),
                                    t.need().component(),
                                    m,
                                    limit,
                                    false)));
                }
            }
        }
    }

    /**
     * The first condition of a criterion on each of its components and each threshold that the component is held
     * against.
     */
    private List<Term> compares(String criterion) {
        Map<List<Object>, Term> first = new LinkedHashMap<>();
        for (Term t : rulebase.terms(criterion)) {
            if (t.kind().compares()) {
                first.putIfAbsent(List.of(t.need(), t.limit()), t);
            }
        }
        return List.copyOf(first.values());
    }

    /** The value just on the other side of a limit. */
    private static Measured across(Term t, Measured m, Limit limit) {
        double step = 1e-6 * Math.max(1, Math.abs(limit.value()));
        // a value at the limit counts to one side of it or the other: whichever it is, the step leads away from there
        boolean over = limit.inclusive() == lower(t)
                ? m.value() >= limit.value() - Measured.ROUNDING
                : m.value() > limit.value() + Measured.ROUNDING;
        return m.plus(limit.value() - m.value() + (over ? -step : step));
    }

    private static boolean lower(Term t) {
        return t.kind() == Term.Kind.AT_LEAST || t.kind() == Term.Kind.BELOW;
    }
}
