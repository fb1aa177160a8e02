package dev.fairlead.check;

import dev.fairlead.facts.CaseFact;
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
import dev.fairlead.rules.Criterion;
import dev.fairlead.rules.Ending;
import dev.fairlead.rules.FactEdit;
import dev.fairlead.rules.QuickJudge;
import dev.fairlead.rules.Rulebase;
import dev.fairlead.rules.Term;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Works out how sure the findings of cases are. Learns as it goes, so one is kept for many cases; safe to share between threads. */
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

    /** By first-order propagation alone. */
    public Doubt of(Case c, CheckOptions options) {
        return doubt(facts(c, options.date()), options.stage().orElse(c.stage()), Optional.empty());
    }

    /** The same, and by so many random draws with that seed. */
    public Doubt of(Case c, CheckOptions options, int draws, long seed) {
        Stage reached = options.stage().orElse(c.stage());
        Simulation drawn = Simulation.of(c, outcomes(options.date(), reached), draws, seed);
        return doubt(facts(c, options.date()), reached, Optional.of(drawn));
    }

    /** Every variant is measured and judged anew; the order is that of the catalogue. */
    public Outcomes outcomes(Optional<LocalDate> day, Stage reached) {
        return variant -> {
            Ending[] endings = judge.endings(facts(variant, day), reached);
            int[] numbers = new int[endings.length];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = endings[i] == null ? -1 : endings[i].ordinal();
            }
            return numbers;
        };
    }

    private List<CaseFact> facts(Case c, Optional<LocalDate> day) {
        return Measures.of(c, day, Workbook.none(), parts).facts();
    }

    private Doubt doubt(List<CaseFact> facts, Stage reached, Optional<Simulation> drawn) {
        List<Compared> compared = compared(facts, reached);
        Flips analytic = new Flips(compared);
        List<Doubt.Flip> flips = new ArrayList<>();
        List<String> ids = judge.criteria();
        for (int i = 0; i < ids.size(); i++) {
            if (reached.hasReached(rulebase.catalogue().criterion(ids.get(i)).stage())) {
                flips.add(new Doubt.Flip(ids.get(i), analytic.of(ids.get(i)),
                        drawn.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(drawn.get().flips()[i])));
            }
        }
        return new Doubt(flips, flips.stream().mapToDouble(Doubt.Flip::chance).sum(), compared, Repeat.ranking(compared),
                drawn.map(s -> new Doubt.Drawn(s.draws(), s.seed(), s.pointers().size())));
    }

    /** All values of all criteria beside the thresholds that they are held against, where an error could carry them across. */
    public List<Compared> compared(List<CaseFact> facts, Stage reached) {
        Ending[] now = judge.endings(facts, reached);
        List<Compared> all = new ArrayList<>();
        List<String> ids = judge.criteria();
        for (int i = 0; i < now.length; i++) {
            Criterion c = rulebase.catalogue().criterion(ids.get(i));
            if (now[i] == null || now[i] == Ending.FAILED) {
                continue;
            }
            for (int f = 0; f < facts.size(); f++) {
                if (facts.get(f).getClass() == c.about()) {
                    compare(facts, f, i, now[i], reached, all);
                }
            }
        }
        return all;
    }

    private void compare(List<CaseFact> facts, int at, int criterion, Ending now, Stage reached, List<Compared> all) {
        CaseFact fact = facts.get(at);
        String id = judge.criteria().get(criterion);
        Set<String> done = new HashSet<>();
        for (Term t : rulebase.terms(id)) {
            if (t.kind().compares() && done.add(t.need().component() + ' ' + t.limit())
                    && t.need().of(fact) instanceof Measured m && m.known() && !m.sources().isEmpty()) {
                Limit limit = rulebase.limits().of(t.limit());
                Compared plain = new Compared(id, fact.place().pointer() + ' ' + fact.place().words(), t.need().component(), m, limit, true);
                if (plain.flipWithModels() > LEAST) {
                    boolean decides = ending(facts, at, across(fact, t, m, limit), criterion, reached) != now;
                    all.add(decides ? plain : new Compared(id, plain.place(), plain.component(), m, limit, false));
                }
            }
        }
    }

    /** The fact with one value just on the other side of a limit. */
    private static CaseFact across(CaseFact fact, Term t, Measured m, Limit limit) {
        double step = 1e-6 * Math.max(1, Math.abs(limit.value()));
        // a value at the limit counts to one side of it or the other: whichever it is, the step leads away from there
        boolean over = limit.inclusive() == lower(t) ? m.value() >= limit.value() - Measured.ROUNDING : m.value() > limit.value() + Measured.ROUNDING;
        return FactEdit.with(fact, t.need().component(), m.plus(limit.value() - m.value() + (over ? -step : step)));
    }

    private static boolean lower(Term t) {
        return t.kind() == Term.Kind.AT_LEAST || t.kind() == Term.Kind.BELOW;
    }

    private Ending ending(List<CaseFact> facts, int at, CaseFact changed, int criterion, Stage reached) {
        List<CaseFact> variant = new ArrayList<>(facts);
        variant.set(at, changed);
        BitSet one = new BitSet();
        one.set(criterion);
        return judge.endings(variant, reached, one)[criterion];
    }
}
