package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.StandsAt;
import dev.fairlead.model.Knowable;
import dev.fairlead.model.Stage;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * What the engine has said so far. A rule looks at one fact through a few plain conditions, so how a criterion ends at a place depends on
 * nothing but {@link Asked}: the engine decides each combination once, and the same combination need not be put to it again. What went wrong
 * is never kept. Safe to share between threads.
 */
final class Known {
    /** Beyond this many nothing more is kept; the rulebase that comes with the program has fewer than a thousand likely ones. */
    private static final int MOST_KEPT = 100_000;

    private final Limits limits;
    private final Criterion[] criteria;
    private final Asked[] asked;
    private final int[] typeOf;
    private final PlaceResult[] absent;
    private final Decided[] decided;
    private final List<Map<Object, Ruling>> kept = new ArrayList<>();
    private final Map<Class<?>, Integer> types = new HashMap<>();
    private final Components[] components;
    private final AtomicInteger size = new AtomicInteger();

    /** Begins with what was decided in the build, by criterion; empty for none. */
    Known(Catalogue catalogue, Limits limits, Map<String, List<Term>> terms, Map<String, byte[]> decided) {
        this.limits = limits;
        this.criteria = catalogue.criteria().toArray(Criterion[]::new);
        this.asked = new Asked[criteria.length];
        this.typeOf = new int[criteria.length];
        this.absent = new PlaceResult[criteria.length];
        this.decided = new Decided[criteria.length];
        for (int i = 0; i < criteria.length; i++) {
            Criterion c = criteria[i];
            asked[i] = new Asked(c, terms.get(c.id()), limits);
            typeOf[i] = types.computeIfAbsent(c.about(), t -> types.size());
            kept.add(new ConcurrentHashMap<>());
            this.decided[i] = asked[i].answerable() && decided.containsKey(c.id()) ? read(decided.get(c.id()), c, limits) : null;
            String section = c.about().getAnnotation(StandsAt.class).value();
            absent[i] = new PlaceResult(new Place(section, ""), null, Status.NOT_ASSESSED, List.of(), List.of(section));
        }
        components = new Components[types.size()];
        types.forEach((type, number) -> components[number] = Components.of(type));
    }

    /** Facts of one case, by type and in the order of their places, each read once. */
    final class Sorted {
        private final List<List<CaseFact>> facts = new ArrayList<>(types.size());
        private final Knowable[][][] parts = new Knowable[types.size()][][];

        Sorted(List<? extends CaseFact> all) {
            for (int i = 0; i < types.size(); i++) {
                facts.add(new ArrayList<>(4));
            }
            for (CaseFact fact : all) {
                Integer type = types.get(fact.getClass());
                if (type != null) {
                    facts.get(type).add(fact);
                }
            }
            for (int i = 0; i < facts.size(); i++) {
                List<CaseFact> here = facts.get(i);
                if (here.size() > 1) {
                    here.sort(PlaceOrder.FACTS);
                }
            }
        }

        /** The components of all facts of one type; read when they are first asked for, since many ask about one criterion. */
        private Knowable[][] parts(int type) {
            Knowable[][] read = parts[type];
            if (read == null) {
                List<CaseFact> here = facts.get(type);
                read = new Knowable[here.size()][];
                for (int f = 0; f < read.length; f++) {
                    read[f] = components[type].of(here.get(f));
                }
                parts[type] = read;
            }
            return read;
        }

        /** The judgement on these facts; null when something in it was not decided before. */
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
            List<CaseFact> about = facts.get(typeOf[criterion]);
            Knowable[][] read = parts(typeOf[criterion]);
            if (about.isEmpty()) {
                return new CriterionResult(criteria[criterion], Status.NOT_ASSESSED, List.of(absent[criterion]), false);
            }
            PlaceResult[] places = new PlaceResult[about.size()];
            for (int p = 0; p < places.length; p++) {
                Ruling ruling = ruling(criterion, read[p]);
                if (ruling == null) {
                    return null;
                }
                places[p] = ruling.at(about.get(p), read[p], asked[criterion].needs());
            }
            List<PlaceResult> all = List.of(places);
            return new CriterionResult(criteria[criterion], CriterionResult.overall(all), all, false);
        }

        /** How a criterion ends over all places; null when that was not decided before. */
        Ending ending(int criterion) {
            Ending heaviest = Ending.FAILED;
            Knowable[][] read = parts(typeOf[criterion]);
            for (int p = 0; p < read.length; p++) {
                Ruling ruling = ruling(criterion, read[p]);
                if (ruling == null) {
                    return null;
                }
                heaviest = ruling.ending().compareTo(heaviest) < 0 ? ruling.ending() : heaviest;
            }
            return read.length == 0 ? Ending.NOT_ASSESSED : heaviest;
        }
    }

    /** How a criterion ends over the facts {@code sorted} when {@code by} stands for one of them; null when that was not decided before. */
    Ending ending(Sorted sorted, int criterion, CaseFact one, CaseFact by) {
        Ending heaviest = Ending.FAILED;
        List<CaseFact> about = sorted.facts.get(typeOf[criterion]);
        for (int p = 0; p < about.size(); p++) {
            boolean here = about.get(p) == one;
            Ruling ruling = ruling(criterion, here ? components[typeOf[criterion]].of(by) : sorted.parts(typeOf[criterion])[p]);
            if (ruling == null) {
                return null;
            }
            heaviest = ruling.ending().compareTo(heaviest) < 0 ? ruling.ending() : heaviest;
        }
        return about.isEmpty() ? Ending.NOT_ASSESSED : heaviest;
    }

    private Ruling ruling(int criterion, Knowable[] fact) {
        if (!asked[criterion].answerable()) {
            return null;
        }
        Object answers = asked[criterion].answers(fact);
        Ruling ruling = decided[criterion] != null && answers instanceof Long bits ? decided[criterion].of(bits) : null;
        if (ruling == null) {
            ruling = kept.get(criterion).get(answers);
        }
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
                    Object answers = asked[i].answers(Components.of(place.fact().getClass()).of(place.fact()));
                    Ruling ruling = kept.get(i).containsKey(answers) ? null : Ruling.of(criteria[i], place, limits);
                    if (ruling != null && kept.get(i).putIfAbsent(answers, ruling) == null) {
                        size.incrementAndGet();
                    }
                }
            }
        }
    }

    private static Decided read(byte[] bytes, Criterion criterion, Limits limits) {
        try {
            return Decided.read(new DataInputStream(new ByteArrayInputStream(bytes)), criterion, limits);
        } catch (IOException e) {
            throw new UncheckedIOException("what the build decided about " + criterion.id() + " is not whole", e);
        }
    }

    /** What was kept about a criterion since, by its answers. */
    Map<Object, Ruling> kept(int criterion) {
        return Map.copyOf(kept.get(criterion));
    }

    /** How many rulings are kept, beside those of the build. */
    int size() {
        return size.get();
    }
}
