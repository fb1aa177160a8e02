package dev.fairlead.check.whatif;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.whatif.Trials.Tried;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.verdict.Rulebase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Searches the plan of a case for the smallest changes that clear its open warnings: every setting of every variable
 * alone, then sets of two and three of those that the warning depends on, the fewest steps first. Each plan is measured
 * and judged anew. The order is fixed and the number of plans bounded, so that the same case gives the same answer.
 * Safe to share between threads.
 */
public final class Search {
    /** Sets of changes that are tried for one warning. */
    private static final int MOST_SETS = 2000;

    private static final int MOST_TOGETHER = 3;

    private final Rulebase rulebase;
    private final Calculations parts;
    private final Checker checker;

    public Search(Rulebase rulebase, Calculations parts) {
        this.rulebase = rulebase;
        this.parts = parts;
        this.checker = new Checker(rulebase, parts);
    }

    /** What could clear the open warnings of a case that was read from content with that hash. */
    public WhatIf of(Case c, String hash, CheckOptions options) {
        Checked checked = checker.check(c, hash, options.with(Doubting.NONE));
        Stage reached = options.reach(c).judged();
        Optional<LocalDate> day = options.reach(c).day();
        List<Finding> open =
                checked.report().findings().all().stream().filter(Finding::open).toList();
        if (open.isEmpty()) {
            return new WhatIf(checked, List.of(), Optional.empty(), 0);
        }
        Trials trials = new Trials(c, day, reached, parts, rulebase);
        List<Variable> variables = PlanVariables.of(c, day, reached);
        Map<Variable, Alone> alone = new LinkedHashMap<>();
        for (Variable v : variables) {
            List<Tried> tried =
                    v.settings().stream().map(s -> trials.tryOut(List.of(s))).toList();
            BitSet all = new BitSet();
            tried.forEach(t -> all.or(trials.touched(t)));
            alone.put(v, new Alone(tried, all));
        }
        Predicate<String> plan = PlanVariables.isPlan(c, day, reached);
        List<Remedy> outlooks = new ArrayList<>();
        List<Tried> best = new ArrayList<>();
        for (Finding f : open) {
            outlooks.add(outlook(f, trials, alone, best, plan));
        }
        return new WhatIf(checked, outlooks, new CombinedPlan(trials).of(best), trials.count());
    }

    /** What the settings of one variable do by themselves, and which criteria one of them turns. */
    private record Alone(List<Tried> tried, BitSet touched) {}

    private Remedy outlook(
            Finding f, Trials trials, Map<Variable, Alone> alone, List<Tried> best, Predicate<String> plan) {
        int criterion = trials.index(f.id());
        Tried clean = null;
        Tried away = null;
        BitSet matters = new BitSet();
        matters.set(criterion);
        List<Tried> clearing = alone.values().stream()
                .flatMap(v -> v.tried().stream())
                .filter(t -> trials.clears(t, criterion))
                .sorted(Comparator.comparingInt(Tried::steps))
                .toList();
        for (Tried t : clearing) {
            List<String> worsened = trials.worsened(t);
            if (!worsened.isEmpty()) {
                if (matters.cardinality() == 1) {
                    worsened.forEach(id -> matters.set(trials.index(id)));
                }
            } else if (trials.near(t).isEmpty()) {
                away = t;
                break;
            } else {
                clean = clean == null ? t : clean;
            }
        }
        clean = away == null ? clean : away;
        if (clean != null) {
            best.add(clean);
            return new Remedy(f, Optional.of(trials.suggestion(clean)), Optional.empty(), rests(f, plan), true);
        }
        boolean reachable = alone.values().stream().anyMatch(v -> v.touched().get(criterion));
        List<Variable> relevant = alone.entrySet().stream()
                .filter(v -> v.getValue().touched().intersects(matters))
                .map(Map.Entry::getKey)
                .toList();
        Sets sets = new Sets(trials, criterion, MOST_SETS);
        Optional<Tried> found = reachable ? sets.smallest(relevant, MOST_TOGETHER) : Optional.empty();
        found.ifPresent(best::add);
        return new Remedy(f, Optional.empty(), found.map(trials::suggestion), rests(f, plan), !sets.ended());
    }

    /** What a warning rests on and no plan changes: the measurements behind it that are not planned. */
    private static List<String> rests(Finding f, Predicate<String> plan) {
        return f.usedFields().stream()
                .filter(plan.negate())
                .map(p -> Missing.of(p).words())
                .toList();
    }
}
