package dev.fairlead.findings;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Reason;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** Puts the result of one criterion into words and numbers. */
final class FindingMaker {
    private static final String FAILED =
            "This criterion could not be judged because of an error of the program; see the list of its own errors.";

    private static final String ENTER = "Enter what is missing. Until then nothing is said of it, for or against.";
    private static final String TELL = "Do not rely on this check for it. Report the error of the program.";

    /** How it reads that a component does not apply, where that says more. */
    private static final Map<String, String> ABSENT = Map.of("weeksSince", "no earlier activation");

    private final Catalogue catalogue;

    private final Function<String, Missing> missing;

    /** {@code missing} tells why a fact at a JSON Pointer is not there. */
    FindingMaker(Catalogue catalogue, Function<String, Missing> missing) {
        this.catalogue = catalogue;
        this.missing = missing;
    }

    Finding finding(CriterionResult r) {
        Criterion c = r.criterion();
        Template template = new Template(c, catalogue);
        List<PlaceFinding> places = new ArrayList<>(r.places().size());
        boolean close = false;
        for (PlaceResult p : r.places()) {
            PlaceFinding place = place(p, c, template);
            places.add(place);
            close |= place.close();
        }
        return new Finding(
                c.id(),
                c.stage(),
                r.status(),
                weight(r.ending()),
                title(r),
                template.general(c.asks()),
                places,
                r.failed() ? FAILED : SeenText.over(places),
                template.general(c.why()),
                todo(r, template),
                sources(c),
                c.dispute(),
                close,
                OptionalDouble.empty(),
                missing(r.missing()),
                Optional.empty(),
                new Traces(r),
                "",
                r.failed());
    }

    private PlaceFinding place(PlaceResult p, Criterion c, Template template) {
        List<SeenValue> values = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        boolean close = false;
        for (Verdict v : p.verdicts()) {
            texts.add(template.at(text(c, v), p, v));
            for (Verdict.Seen s : v.seen()) {
                SeenValue value = new SeenValue(s.value(), catalogue.threshold(s.limit()));
                values.add(value);
                close |= value.close();
            }
        }
        List<Missing> missing = missing(p.missing());
        if (texts.isEmpty()) {
            texts.add(p.status() == Status.NOT_ASSESSED ? SeenText.missing(missing) : notApplicable(p, c));
        }
        return new PlaceFinding(
                p.place().pointer(),
                p.place().words(),
                p.status(),
                weight(p.ending()),
                String.join("; ", texts),
                values,
                missing,
                close);
    }

    /** Of a warning the fault that weighs most; else the criterion's own. */
    private static String title(CriterionResult r) {
        List<Reason> reasons = reasons(r);
        return reasons.isEmpty() ? r.criterion().title() : reasons.get(0).title();
    }

    /** Of a warning what is to be done about each of its reasons, each sentence once; nothing of a pass. */
    private static String todo(CriterionResult r, Template template) {
        if (r.status() == Status.NOT_ASSESSED) {
            return r.failed() ? TELL : ENTER;
        }
        Set<String> each = new LinkedHashSet<>();
        for (Reason reason : reasons(r)) {
            each.addAll(List.of(template.general(reason.todo()).split("(?<=[.!?]) (?=\\p{Lu})")));
        }
        return String.join(" ", each);
    }

    /** Reasons of a warning, the heaviest first; none of another ending. */
    private static List<Reason> reasons(CriterionResult r) {
        List<Reason> reasons = new ArrayList<>();
        if (r.ending().warns()) {
            for (String key : r.reasons()) {
                reasons.add(r.criterion().reasons().get(key));
            }
            reasons.sort(Comparator.comparing(Reason::weight));
        }
        return reasons;
    }

    private static Weight weight(Ending ending) {
        return ending == Ending.STOP ? Weight.STOP : ending.warns() ? Weight.CAUTION : Weight.NONE;
    }

    private List<Missing> missing(List<String> pointers) {
        return pointers.isEmpty() ? List.of() : pointers.stream().map(missing).toList();
    }

    private static String text(Criterion c, Verdict v) {
        if (v.ending() == Ending.PASS) {
            return c.passes();
        }
        return v.ending().warns()
                ? Objects.requireNonNull(c.reasons().get(v.reason())).says()
                : Objects.requireNonNull(c.exemptions().get(v.reason()));
    }

    /** No rule exempts it: the case itself says that a fact does not apply. */
    private static String notApplicable(PlaceResult p, Criterion c) {
        CaseFact fact = p.fact();
        for (Need need : c.needs()) {
            if (fact != null && !need.of(fact).applies()) {
                return ABSENT.getOrDefault(need.component(), Words.apart(need.component()) + " does not apply");
            }
        }
        return "does not apply";
    }

    /** Sources of the criterion, then of thresholds that it reads, each once. */
    private List<Source> sources(Criterion c) {
        Set<String> keys = new LinkedHashSet<>(c.sources());
        for (Threshold t : c.thresholds().values()) {
            keys.addAll(t.sources());
        }
        List<Source> sources = new ArrayList<>(keys.size());
        for (String key : keys) {
            sources.add(catalogue.sources().get(key));
        }
        return sources;
    }
}
