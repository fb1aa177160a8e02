package dev.fairlead.rules.language;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.rules.catalogue.Ending;
import java.util.ArrayList;
import java.util.List;

/** Collects what the rules say of one case; the global {@code verdicts} of every rule. Not shared between threads. */
public final class Verdicts {
    private final List<Verdict> all = new ArrayList<>(128);

    public Verdict pass(String criterion, CaseFact fact) {
        return add(criterion, fact, Ending.PASS, "");
    }

    /** A warning of weight caution; {@code reason} is a key of the criterion's reasons. */
    public Verdict caution(String criterion, CaseFact fact, String reason) {
        return add(criterion, fact, Ending.CAUTION, reason);
    }

    /** A warning of weight stop; {@code reason} is a key of the criterion's reasons. */
    public Verdict stop(String criterion, CaseFact fact, String reason) {
        return add(criterion, fact, Ending.STOP, reason);
    }

    /** The criterion does not apply at this place; {@code reason} is a key of the criterion's exemptions. */
    public Verdict doesNotApply(String criterion, CaseFact fact, String reason) {
        return add(criterion, fact, Ending.DOES_NOT_APPLY, reason);
    }

    Verdict add(String criterion, CaseFact fact, Ending ending, String reason) {
        Verdict verdict = new Verdict(criterion, fact, ending, reason);
        all.add(verdict);
        return verdict;
    }

    public List<Verdict> all() {
        return List.copyOf(all);
    }
}
