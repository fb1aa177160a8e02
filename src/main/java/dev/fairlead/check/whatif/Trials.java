package dev.fairlead.check.whatif;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Findings;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.PlaceResult;
import dev.fairlead.rules.verdict.Rulebase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Measures and judges other plans of one case beside the case as it stands. Not shared between threads. */
final class Trials {
    /**
     * One plan that was tried.
     *
     * @param moves false for a plan that moves nothing on either side, which is no plan
     */
    record Tried(List<Setting> settings, boolean moves, List<CaseFact> facts, Ending[] endings) {
        int steps() {
            return settings.stream().mapToInt(Setting::steps).sum();
        }
    }

    /** Other plans are judged at every stage that they touch, also where the case has not come to it. */
    private static final Stage LAST = Stage.HOLDING;

    private static final List<String> WEIGHED = List.of(
            "position.spare.",
            "position.overjet-after",
            "position.inclination-after",
            "schedule.activations.both-sides",
            "wire.force.");

    private final Case c;
    private final Optional<LocalDate> day;
    private final Stage reached;
    private final Calculations parts;
    private final Judge judge;
    private final List<Criterion> criteria;
    private final Rulebase rulebase;
    private final Tried now;
    private @Nullable List<String> closeNow;
    private int count;

    Trials(Case c, Optional<LocalDate> day, Stage reached, Calculations parts, Rulebase rulebase) {
        this.c = c;
        this.day = day;
        this.reached = reached;
        this.parts = reached.hasReached(Stage.BENCH) ? parts : parts.withoutForces();
        this.judge = rulebase.judge();
        this.rulebase = rulebase;
        this.criteria = rulebase.catalogue().criteria();
        this.now = tryOut(List.of());
        this.count = 0;
    }

    int count() {
        return count;
    }

    int index(String criterion) {
        return judge.criteria().indexOf(criterion);
    }

    Tried tryOut(List<Setting> settings) {
        Case variant = apply(settings);
        count++;
        List<CaseFact> facts = Measures.of(variant, day, Workbook.none(), parts).facts();
        return new Tried(
                settings, moves(variant), facts, judge.judge(facts, LAST).endings());
    }

    private static boolean moves(Case variant) {
        Measured most = variant.plan().advanceLeft().max(variant.plan().advanceRight());
        return !most.known() || most.value() > 0;
    }

    /** True when a criterion that warns now ends with a pass, or does not apply, by a plan that moves something. */
    boolean clears(Tried t, int criterion) {
        return t.moves() && (t.endings()[criterion] == Ending.PASS || t.endings()[criterion] == Ending.DOES_NOT_APPLY);
    }

    /** Criteria that end worse than they do now, or warn as heavily and at one more place or for one more reason. */
    List<String> worsened(Tried t) {
        List<String> worse = new ArrayList<>();
        for (int i = 0; i < t.endings().length; i++) {
            Ending before = now.endings()[i];
            Ending after = t.endings()[i];
            // heavier endings come first
            boolean lost = before != null && before != after && (after == Ending.FAILED || after.compareTo(before) < 0);
            if (lost || before == after && after != null && after.warns() && spreads(t, i)) {
                worse.add(judge.criteria().get(i));
            }
        }
        return worse;
    }

    /** True when a criterion that warns would warn at a place or for a reason for which it does not warn now. */
    private boolean spreads(Tried t, int criterion) {
        return differs(criteria.get(criterion), t) && !warned(now, criterion).containsAll(warned(t, criterion));
    }

    /** Places at which a criterion warns, each with its reason. */
    private Set<String> warned(Tried t, int criterion) {
        Criterion of = criteria.get(criterion);
        Set<String> warned = new HashSet<>();
        for (PlaceResult p : judge.judge(about(t, of), LAST).result(criterion).places()) {
            if (p.ending().warns()) {
                for (Verdict v : p.verdicts()) {
                    warned.add(p.place().pointer() + ' ' + p.place().words() + ' ' + v.reason());
                }
            }
        }
        return warned;
    }

    /** Criteria that warn now and would warn no more. */
    List<String> cleared(Tried t) {
        List<String> clears = new ArrayList<>();
        for (int i = 0; i < t.endings().length; i++) {
            if (reached.hasReached(criteria.get(i).stage())
                    && now.endings()[i] != null
                    && now.endings()[i].warns()
                    && clears(t, i)) {
                clears.add(judge.criteria().get(i));
            }
        }
        return clears;
    }

    /** Criteria that pass now, away from their limits, and would come within the error of a limit. */
    List<String> near(Tried t) {
        if (closeNow == null) {
            closeNow = close(now);
        }
        return close(t).stream().filter(id -> !closeNow.contains(id)).toList();
    }

    /** Criteria that pass within the error of a limit. */
    private List<String> close(Tried t) {
        Findings findings =
                Findings.of(judge.judge(t.facts(), LAST), rulebase.catalogue(), List.of(), Optional.empty());
        return findings.all().stream()
                .filter(f -> f.outcome() == Status.PASS && f.close())
                .map(Finding::id)
                .toList();
    }

    Suggestion suggestion(Tried t) {
        return new Suggestion(
                t.settings().stream().flatMap(s -> s.changes().stream()).toList(),
                t.settings().stream().flatMap(s -> s.follows().stream()).toList(),
                GaugeEstimate.of(c, changed(t.settings()), parts.force()),
                t.steps(),
                cleared(t),
                worsened(t),
                near(t),
                costs(t),
                shortOf(t));
    }

    /** What a plan is weighed by: room, visits, force, overjet, inclination; what the change does to them. */
    private List<Difference.NumberChange> costs(Tried t) {
        return Difference.numbers(weighed(c), weighed(apply(t.settings())));
    }

    private List<Working> weighed(Case variant) {
        return Measures.of(variant, day, Workbook.kept(), parts).workings().stream()
                .filter(w -> WEIGHED.stream().anyMatch(w.id()::startsWith))
                .toList();
    }

    /** What each side then gets less than it needs, mm, where the plan gives less than now. */
    private List<Measured> shortOf(Tried t) {
        Case variant = apply(t.settings());
        List<Measured> all = new ArrayList<>();
        for (Side side : Side.values()) {
            Measured less = variant.plan().advance(side).minus(c.plan().advance(side));
            boolean asked = less.known() && less.value() < 0;
            all.add(
                    asked
                            ? Measures.of(variant, day, Workbook.kept(), parts)
                                    .front()
                                    .orElseThrow()
                                    .position()
                                    .side(side)
                                    .spare()
                            : Measured.notApplicable());
        }
        return all;
    }

    private Case apply(List<Setting> settings) {
        Case variant = changed(settings);
        return GaugeEstimate.in(variant, GaugeEstimate.of(c, variant, parts.force()));
    }

    private Case changed(List<Setting> settings) {
        Case variant = c;
        for (Setting s : settings) {
            variant = s.in(variant);
        }
        return variant;
    }

    /** Criteria of which a need is otherwise than in the case as it stands. */
    BitSet touched(Tried t) {
        BitSet touched = new BitSet();
        for (int i = 0; i < criteria.size(); i++) {
            Criterion criterion = criteria.get(i);
            if (now.endings()[i] != null && differs(criterion, t)) {
                touched.set(i);
            }
        }
        return touched;
    }

    private boolean differs(Criterion criterion, Tried t) {
        List<CaseFact> before = about(now, criterion);
        List<CaseFact> after = about(t, criterion);
        if (before.size() != after.size()) {
            return true;
        }
        for (int i = 0; i < before.size(); i++) {
            for (Need need : criterion.needs()) {
                CaseValue a = need.of(before.get(i));
                if (!a.equals(need.of(after.get(i)))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<CaseFact> about(Tried t, Criterion criterion) {
        return t.facts().stream().filter(f -> f.getClass() == criterion.about()).toList();
    }
}
