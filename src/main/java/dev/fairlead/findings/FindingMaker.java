package dev.fairlead.findings;

import dev.fairlead.model.Knowable;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.rules.Criterion;
import dev.fairlead.rules.CriterionResult;
import dev.fairlead.rules.Hash;
import dev.fairlead.rules.Need;
import dev.fairlead.rules.PlaceResult;
import dev.fairlead.rules.Source;
import dev.fairlead.rules.Status;
import dev.fairlead.rules.Threshold;
import dev.fairlead.rules.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** Puts the result of one criterion into words and numbers. */
final class FindingMaker {
    private static final String FAILED = "This criterion could not be judged because of an error of the program; see the list of its own errors.";

    private final Catalogue catalogue;

    FindingMaker(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    Finding finding(CriterionResult r) {
        Criterion c = r.criterion();
        Template template = new Template(c, catalogue);
        List<PlaceFinding> places = r.places().stream().map(p -> place(p, c, template)).toList();
        Weight weight = r.stop() ? Weight.STOP : r.status() == Status.WARN ? Weight.CAUTION : Weight.NONE;
        List<Missing> missing = r.missing().stream().map(Missing::of).toList();
        return new Finding(c.id(), c.stage(), r.status(), weight, c.title(), template.general(c.asks()), places,
                r.failed() ? FAILED : SeenText.over(places), template.general(c.why()), template.general(c.todo()), sources(c), c.dispute(),
                places.stream().anyMatch(PlaceFinding::close), OptionalDouble.empty(), missing, Optional.empty(), fingerprint(r), used(r), r.failed());
    }

    private PlaceFinding place(PlaceResult p, Criterion c, Template template) {
        List<SeenValue> values = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (Verdict v : p.verdicts()) {
            texts.add(template.at(text(c, v), p, v));
            v.seen().forEach(s -> values.add(SeenValue.of(s.value(), catalogue.thresholds().get(s.limit()))));
        }
        List<Missing> missing = p.missing().stream().map(Missing::of).toList();
        if (texts.isEmpty()) {
            texts.add(p.status() == Status.NOT_ASSESSED ? SeenText.missing(missing) : notApplicable(p, c));
        }
        Weight weight = p.stop() ? Weight.STOP : p.status() == Status.WARN ? Weight.CAUTION : Weight.NONE;
        return new PlaceFinding(p.place().pointer(), p.place().words(), p.status(), weight, String.join("; ", texts), values, missing,
                values.stream().anyMatch(SeenValue::close));
    }

    private static String text(Criterion c, Verdict v) {
        return switch (v.outcome()) {
            case PASS -> c.passes();
            case CAUTION, STOP -> c.reasons().get(v.reason());
            case DOES_NOT_APPLY -> c.exemptions().get(v.reason());
        };
    }

    /** No rule exempts it: the case itself says that a fact does not apply. */
    private static String notApplicable(PlaceResult p, Criterion c) {
        return c.needs().stream().filter(n -> p.fact() != null && !n.of(p.fact()).applies()).findFirst()
                .map(n -> Words.apart(n.component()) + " does not apply").orElse("does not apply");
    }

    /** Sources of the criterion, then of thresholds that it reads, each once. */
    private List<Source> sources(Criterion c) {
        Set<String> keys = new LinkedHashSet<>(c.sources());
        for (Threshold t : c.thresholds().values()) {
            keys.addAll(t.sources());
        }
        return keys.stream().map(catalogue.sources()::get).toList();
    }

    private static String fingerprint(CriterionResult r) {
        StringBuilder all = new StringBuilder(r.criterion().id()).append('|').append(r.status()).append('|').append(r.failed());
        for (PlaceResult p : r.places()) {
            all.append('|').append(p.place().pointer()).append(' ').append(p.place().words()).append(' ').append(p.status());
            p.verdicts().forEach(v -> all.append(' ').append(v.outcome()).append(':').append(v.reason()));
        }
        return Hash.of(all.toString()).substring(0, 16);
    }

    private static List<String> used(CriterionResult r) {
        Set<String> used = new TreeSet<>(r.missing());
        for (PlaceResult p : r.places()) {
            for (Need need : p.fact() == null ? List.<Need>of() : r.criterion().needs()) {
                Knowable k = need.of(p.fact());
                if (k instanceof Measured m) {
                    m.sources().stream().filter(s -> s.startsWith("/")).forEach(used::add);
                }
            }
        }
        return List.copyOf(used);
    }
}
