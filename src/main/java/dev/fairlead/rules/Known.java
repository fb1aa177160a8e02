package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Stage;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * What the engine has said so far. A rule looks at one fact through a few plain conditions, so how a criterion ends at
 * a place depends on nothing but {@link Asked}: the engine decides each combination once, and the same combination need
 * not be put to it again. What went wrong is never kept. Safe to share between threads.
 */
final class Known {
    /**
     * Beyond this many nothing more is kept; the rulebase that comes with the program has fewer than a thousand likely
     * ones.
     */
    private static final int MOST_KEPT = 100_000;

    private final Limits limits;
    private final Criterion[] criteria;
    private final Asked[] asked;
    private final int[] typeOf;
    private final PlaceResult[] absent;
    private final Rulings[] kept;
    private final Map<Class<?>, Integer> types = new HashMap<>();
    private final AtomicInteger size = new AtomicInteger();

    /** Begins with what was decided in the build, by criterion; empty for none. */
    Known(Catalogue catalogue, Limits limits, Map<String, List<Term>> terms, Map<String, byte[]> decided) {
        this.limits = limits;
        this.criteria = catalogue.criteria().toArray(Criterion[]::new);
        this.asked = new Asked[criteria.length];
        this.typeOf = new int[criteria.length];
        this.absent = new PlaceResult[criteria.length];
        this.kept = new Rulings[criteria.length];
        for (int i = 0; i < criteria.length; i++) {
            Criterion c = criteria[i];
            asked[i] = new Asked(c, terms.get(c.id()), limits);
            Integer type = types.get(c.about());
            typeOf[i] = type != null ? type : types.size();
            types.put(c.about(), typeOf[i]);
            kept[i] = new Rulings(
                    asked[i].answerable() && decided.containsKey(c.id()) ? read(decided.get(c.id()), c, limits) : null);
        }
    }

    /** Made when first asked for; threads that ask at once make the same twice. */
    private PlaceResult absent(int criterion) {
        PlaceResult made = absent[criterion];
        if (made == null) {
            made = PlaceResult.absent(criteria[criterion]);
            absent[criterion] = made;
        }
        return made;
    }

    /** Facts of one case by type, each read once. */
    final class Sorted {
        private final CaseFact[][] facts = new CaseFact[types.size()][];
        private final CaseValue[][][] parts = new CaseValue[types.size()][][];
        private final byte[][][] states = new byte[types.size()][][];
        private final int[][] orders = new int[types.size()][];

        /**
         * With {@code inOrder} facts of one type are put in the order of their places, on which endings do not depend.
         */
        Sorted(List<? extends CaseFact> all, boolean inOrder) {
            int[] type = new int[all.size()];
            int[] count = new int[facts.length];
            for (int i = 0; i < type.length; i++) {
                type[i] = types.getOrDefault(all.get(i).getClass(), -1);
                if (type[i] >= 0) {
                    count[type[i]]++;
                }
            }
            for (int i = 0; i < facts.length; i++) {
                facts[i] = new CaseFact[count[i]];
            }
            for (int i = type.length - 1; i >= 0; i--) {
                if (type[i] >= 0) {
                    facts[type[i]][--count[type[i]]] = all.get(i);
                }
            }
            for (CaseFact[] here : facts) {
                if (inOrder && here.length > 1) {
                    Arrays.sort(here, PlaceOrder.FACTS);
                }
            }
        }

        /**
         * The components of all facts of one type; read when they are first asked for, since many ask about one
         * criterion.
         */
        private CaseValue[][] parts(int type) {
            CaseValue[][] read = parts[type];
            if (read == null) {
                CaseFact[] here = facts[type];
                read = new CaseValue[here.length][];
                states[type] = new byte[here.length][];
                for (int f = 0; f < here.length; f++) {
                    read[f] = here[f].components();
                    states[type][f] = Asked.states(read[f]);
                }
                parts[type] = read;
            }
            return read;
        }

        /** The judgement on these facts, which are in order; null when something in it was not decided before. */
        Judgement judgement(Stage reached) {
            List<CriterionResult> results = new ArrayList<>(criteria.length);
            for (int i = 0; i < criteria.length; i++) {
                if (reached.hasReached(criteria[i].stage())) {
                    CriterionResult result = result(i);
                    if (result == null) {
                        return null;
                    }
                    results.add(result);
                }
            }
            return new Judgement(results, List.of());
        }

        private CriterionResult result(int criterion) {
            CaseFact[] about = facts[typeOf[criterion]];
            CaseValue[][] read = parts(typeOf[criterion]);
            if (about.length == 0) {
                return new CriterionResult(criteria[criterion], Status.NOT_ASSESSED, List.of(absent(criterion)), false);
            }
            PlaceResult[] places = new PlaceResult[about.length];
            for (int p = 0; p < places.length; p++) {
                Ruling ruling = ruling(criterion, p);
                if (ruling == null) {
                    return null;
                }
                places[p] = ruling.at(about[p], read[p], asked[criterion].needs());
            }
            List<PlaceResult> all = List.of(places);
            return new CriterionResult(criteria[criterion], CriterionResult.overall(all), all, false);
        }

        /** How every criterion of the stages reached ends; null when something in it was not decided before. */
        Endings endings(Stage reached) {
            Ending[] endings = new Ending[criteria.length];
            List<List<String>> missing = new ArrayList<>(criteria.length);
            for (int i = 0; i < criteria.length; i++) {
                if (reached.hasReached(criteria[i].stage())) {
                    endings[i] = ending(i);
                    if (endings[i] == null) {
                        return null;
                    }
                }
                missing.add(endings[i] == Ending.NOT_ASSESSED ? missing(i) : List.of());
            }
            return new Endings(Arrays.asList(endings), missing, List.of());
        }

        /** How a criterion ends over all places; null when that was not decided before. */
        Ending ending(int criterion) {
            Ending heaviest = Ending.FAILED;
            int places = facts[typeOf[criterion]].length;
            for (int p = 0; p < places; p++) {
                Ruling ruling = ruling(criterion, p);
                if (ruling == null) {
                    return null;
                }
                heaviest = ruling.ending().compareTo(heaviest) < 0 ? ruling.ending() : heaviest;
            }
            return places == 0 ? Ending.NOT_ASSESSED : heaviest;
        }

        private List<String> missing(int criterion) {
            CaseFact[] about = facts[typeOf[criterion]];
            if (about.length == 0) {
                return absent(criterion).missing();
            }
            List<String> missing = List.of();
            for (int place : inOrder(typeOf[criterion])) {
                missing = Pointers.union(
                        missing,
                        ruling(criterion, place).missing(parts(typeOf[criterion])[place], asked[criterion].needs()));
            }
            return missing;
        }

        /**
         * The facts of one type in the order of their places, by number; they are few, and mostly in that order
         * already.
         */
        private int[] inOrder(int type) {
            if (orders[type] == null) {
                CaseFact[] here = facts[type];
                int[] order = new int[here.length];
                for (int i = 0; i < order.length; i++) {
                    int at = i;
                    for (; at > 0 && PlaceOrder.FACTS.compare(here[order[at - 1]], here[i]) > 0; at--) {
                        order[at] = order[at - 1];
                    }
                    order[at] = i;
                }
                orders[type] = order;
            }
            return orders[type];
        }

        /** The facts that a criterion looks at. */
        List<CaseFact> about(int criterion) {
            return Collections.unmodifiableList(Arrays.asList(facts[typeOf[criterion]]));
        }

        /** What one of those facts says of a component. */
        CaseValue value(int criterion, int place, Need need) {
            return parts(typeOf[criterion])[place][need.at()];
        }

        /**
         * How a criterion ends when a component of one of those facts is another; null when that was not decided
         * before.
         */
        Ending ending(int criterion, int place, Need need, CaseValue other) {
            int type = typeOf[criterion];
            Ending heaviest = Ending.FAILED;
            for (int p = 0; p < facts[type].length; p++) {
                Ruling ruling =
                        p == place ? ruled(criterion, changed(parts(type)[p], need, other)) : ruling(criterion, p);
                if (ruling == null) {
                    return null;
                }
                heaviest = ruling.ending().compareTo(heaviest) < 0 ? ruling.ending() : heaviest;
            }
            return heaviest;
        }

        private Ruling ruling(int criterion, int place) {
            int type = typeOf[criterion];
            CaseValue[] fact = parts(type)[place];
            return ruled(criterion, fact, states[type][place]);
        }
    }

    private static CaseValue[] changed(CaseValue[] fact, Need need, CaseValue other) {
        CaseValue[] changed = fact.clone();
        changed[need.at()] = other;
        return changed;
    }

    private Ruling ruled(int criterion, CaseValue[] fact) {
        return ruled(criterion, fact, Asked.states(fact));
    }

    private Ruling ruled(int criterion, CaseValue[] fact, byte[] states) {
        Asked to = asked[criterion];
        if (!to.answerable()) {
            return null;
        }
        Ruling ruling =
                to.wide() ? kept[criterion].of(to.manyAnswers(fact)) : kept[criterion].of(to.answers(fact, states));
        return ruling != null && ruling.fits(fact) ? ruling : null;
    }

    /** Keeps what the engine said, where nothing went wrong. */
    void keep(Judgement judged) {
        Map<String, CriterionResult> byId = new HashMap<>();
        judged.results().forEach(r -> byId.put(r.criterion().id(), r));
        for (int i = 0; i < criteria.length; i++) {
            CriterionResult result = byId.get(criteria[i].id());
            if (result == null || result.failed() || !asked[i].answerable()) {
                continue;
            }
            for (PlaceResult place : result.places()) {
                if (place.fact() != null && size.get() < MOST_KEPT) {
                    Ruling ruling = Ruling.of(criteria[i], place, limits);
                    if (ruling != null && keep(i, place.fact().components(), ruling)) {
                        size.incrementAndGet();
                    }
                }
            }
        }
    }

    private boolean keep(int criterion, CaseValue[] fact, Ruling ruling) {
        Asked to = asked[criterion];
        return to.wide()
                ? kept[criterion].keep(to.manyAnswers(fact), ruling)
                : kept[criterion].keep(to.answers(fact, Asked.states(fact)), ruling);
    }

    private static Decided read(byte[] bytes, Criterion criterion, Limits limits) {
        try {
            return Decided.read(new DataInputStream(new ByteArrayInputStream(bytes)), criterion, limits);
        } catch (IOException e) {
            throw new UncheckedIOException("what the build decided about " + criterion.id() + " is not whole", e);
        }
    }

    /** What was kept about a criterion since, by its answers. */
    Map<Long, Ruling> kept(int criterion) {
        return kept[criterion].all();
    }

    /** How many rulings are kept, beside those of the build. */
    int size() {
        return size.get();
    }
}
