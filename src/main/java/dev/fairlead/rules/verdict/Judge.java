package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.engine.Engine;
import dev.fairlead.rules.engine.Memo;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Judges the facts of cases by a rulebase: the engine is asked about every fact that the memo does not know the like
 * of. Safe to share between threads; the order of facts does not matter.
 */
public final class Judge {
    private final Criterion[] criteria;
    private final Limits limits;
    private final Engine engine;
    private final @Nullable Memo<Ruling> memo;

    /** Without a memo when {@code memo} is null. */
    Judge(Catalogue catalogue, Limits limits, Engine engine, @Nullable Memo<Ruling> memo) {
        this.criteria = catalogue.criteria().toArray(Criterion[]::new);
        this.limits = limits;
        this.engine = engine;
        this.memo = memo;
    }

    /** Identifiers of the criteria, in the order in which endings come. */
    public List<String> criteria() {
        return Arrays.stream(criteria).map(Criterion::id).toList();
    }

    /** Judges by every criterion. */
    public Judgement judge(List<? extends CaseFact> facts) {
        return judge(facts, Stage.HOLDING);
    }

    /** Judges by the criteria of all stages up to {@code reached}. */
    public Judgement judge(List<? extends CaseFact> facts, Stage reached) {
        FactsByType sorted = new FactsByType(facts);
        Set<CaseFact> open = Collections.newSetFromMap(new IdentityHashMap<>());
        PlaceResult[][] places = new PlaceResult[criteria.length][];
        for (int i = 0; i < criteria.length; i++) {
            if (reached.hasReached(criteria[i].stage())) {
                places[i] = places(i, sorted, open);
            }
        }
        List<OwnError> errors = new ArrayList<>();
        Set<String> failed = new LinkedHashSet<>();
        if (!open.isEmpty()) {
            complete(places, sorted, open, errors, failed);
        }
        List<CriterionResult> results = new ArrayList<>(criteria.length);
        for (int i = 0; i < criteria.length; i++) {
            if (places[i] == null) {
                continue;
            }
            Criterion c = criteria[i];
            if (failed.contains(c.id())) {
                results.add(new CriterionResult(c, Status.NOT_ASSESSED, List.of(), true));
                continue;
            }
            List<PlaceResult> all = places[i].length == 0 ? List.of(PlaceResult.absent(c)) : List.of(places[i]);
            results.add(new CriterionResult(c, CriterionResult.overall(all), all, false));
        }
        return new Judgement(results, errors);
    }

    /** What the memo knows; facts of which it knows nothing are added to {@code open}. */
    private PlaceResult[] places(int criterion, FactsByType sorted, Set<CaseFact> open) {
        List<CaseFact> about = sorted.of(criteria[criterion].about());
        PlaceResult[] places = new PlaceResult[about.size()];
        for (int p = 0; p < places.length; p++) {
            CaseValue[] parts = sorted.parts(about.get(p));
            Ruling ruling = known(criterion, parts);
            if (ruling == null) {
                open.add(about.get(p));
            } else {
                places[p] = ruling.at(about.get(p), parts);
            }
        }
        return places;
    }

    private @Nullable Ruling known(int criterion, CaseValue[] parts) {
        Ruling ruling = memo == null ? null : memo.of(criterion, parts);
        return ruling != null && ruling.fits(parts) ? ruling : null;
    }

    /** Fills the places that the memo left open with what the engine says of their facts. */
    private void complete(
            PlaceResult[][] places, FactsByType sorted, Set<CaseFact> open, List<OwnError> errors, Set<String> failed) {
        Engine.Heard heard = engine.ask(sorted.in(open), limits);
        for (int i = 0; i < criteria.length; i++) {
            Criterion c = criteria[i];
            if (places[i] == null) {
                continue;
            }
            if (heard.failed().containsKey(c.id())) {
                errors.add(
                        new OwnError(c.id(), "a rule failed: " + heard.failed().get(c.id())));
                failed.add(c.id());
                continue;
            }
            List<CaseFact> about = sorted.of(c.about());
            for (int p = 0; p < places[i].length; p++) {
                if (places[i][p] == null) {
                    FillIn at = new FillIn(c, about.get(p), sorted.parts(about.get(p)), limits);
                    places[i][p] = at.result(heard.verdicts().getOrDefault(c.id(), List.of()));
                    if (at.errors().isEmpty()) {
                        keep(i, about.get(p), places[i][p], sorted.parts(about.get(p)));
                    } else {
                        errors.addAll(at.errors());
                        failed.add(c.id());
                    }
                }
            }
        }
    }

    private void keep(int criterion, CaseFact fact, PlaceResult place, CaseValue[] parts) {
        if (memo == null) {
            return;
        }
        Criterion c = criteria[criterion];
        Ruling ruling = Ruling.of(c, place, parts, limits);
        if (ruling == null) {
            // two components are the same number, as ends of a band that was gauged: of a copy in which they are not it
            // can be told which of them the verdict shows
            CaseFact copy = FactEdit.distinct(fact);
            FillIn at = new FillIn(c, copy, copy.components(), limits);
            Engine.Heard heard = engine.ask(List.of(copy), limits);
            PlaceResult same = at.result(heard.verdicts().getOrDefault(c.id(), List.of()));
            ruling = at.errors().isEmpty() ? Ruling.of(c, same, copy.components(), limits) : null;
        }
        if (ruling != null) {
            memo.keep(criterion, parts, ruling);
        }
    }

    /** How every criterion of the stages reached ends, with what is missing, and no more: for many cases. */
    public Endings endings(List<? extends CaseFact> facts, Stage reached) {
        FactsByType sorted = new FactsByType(facts);
        Ending[] endings = new Ending[criteria.length];
        List<List<String>> missing = new ArrayList<>(criteria.length);
        for (int i = 0; i < criteria.length; i++) {
            if (reached.hasReached(criteria[i].stage())) {
                endings[i] = ending(i, sorted);
                if (endings[i] == null) {
                    return Endings.of(judge(facts, reached), List.of(criteria));
                }
            }
            missing.add(endings[i] == Ending.NOT_ASSESSED ? missing(i, sorted) : List.of());
        }
        return new Endings(Arrays.asList(endings), missing, List.of());
    }

    /** How every criterion of the stages reached ends; null for the others. */
    public Ending[] ends(List<? extends CaseFact> facts, Stage reached) {
        BitSet all = new BitSet();
        all.set(0, criteria.length);
        return ends(facts, reached, all);
    }

    /** How the criteria of those numbers in the catalogue end; null for others, and for stages that are not reached. */
    public Ending[] ends(List<? extends CaseFact> facts, Stage reached, BitSet wanted) {
        FactsByType sorted = new FactsByType(facts);
        Ending[] endings = new Ending[criteria.length];
        for (int i = wanted.nextSetBit(0); i >= 0; i = wanted.nextSetBit(i + 1)) {
            if (reached.hasReached(criteria[i].stage())) {
                endings[i] = ending(i, sorted);
                if (endings[i] == null) {
                    List<Ending> asked =
                            Endings.of(judge(facts, reached), List.of(criteria)).endings();
                    wanted.stream().forEach(k -> endings[k] = asked.get(k));
                    return endings;
                }
            }
        }
        return endings;
    }

    /** How a criterion ends over all places; null when the memo does not know that. */
    private @Nullable Ending ending(int criterion, FactsByType sorted) {
        List<CaseFact> about = sorted.of(criteria[criterion].about());
        Ending heaviest = about.isEmpty() ? Ending.NOT_ASSESSED : Ending.FAILED;
        for (CaseFact fact : about) {
            Ruling ruling = known(criterion, sorted.parts(fact));
            if (ruling == null) {
                return null;
            }
            heaviest = ruling.ending().compareTo(heaviest) < 0 ? ruling.ending() : heaviest;
        }
        return heaviest;
    }

    private List<String> missing(int criterion, FactsByType sorted) {
        Criterion c = criteria[criterion];
        List<CaseFact> about = sorted.of(c.about());
        if (about.isEmpty()) {
            return PlaceResult.absent(c).missing();
        }
        Set<String> missing = new LinkedHashSet<>();
        for (CaseFact fact : about) {
            CaseValue[] parts = sorted.parts(fact);
            missing.addAll(Objects.requireNonNull(known(criterion, parts)).missing(parts));
        }
        return List.copyOf(missing);
    }

    /** The same by the engine alone, whatever it has said before. */
    public Judge withoutMemo() {
        return new Judge(this);
    }

    /** How many answers of the engine are remembered. */
    int remembered() {
        return memo == null ? 0 : memo.size();
    }

    private Judge(Judge other) {
        this.criteria = other.criteria;
        this.limits = other.limits;
        this.engine = other.engine;
        this.memo = null;
    }
}
