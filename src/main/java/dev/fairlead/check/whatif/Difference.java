package dev.fairlead.check.whatif;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Finding;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Status;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a change of a case changes.
 *
 * @param sets what was set
 * @param estimates gauge readings that are none any more
 * @param numbers worked numbers that come out otherwise
 * @param findings findings that end otherwise, those gained first
 */
public record Difference(
        List<Given> sets,
        List<GaugeEstimate> estimates,
        Checked before,
        Checked after,
        List<NumberChange> numbers,
        List<FindingChange> findings) {
    /** Two numbers closer than this, as a share of the larger, are one number. */
    private static final double SAME = 1e-9;

    /**
     * A value that was set.
     *
     * @param planned a value of the plan; false for a fact of the patient or of what was done, which no plan can change
     */
    public record Given(String pointer, String words, String from, String to, boolean planned) {}

    /** A worked number before and after; one of them may be unknown. */
    public record NumberChange(String id, String title, Measured before, Measured after) {}

    /** How the ending of a criterion changes. */
    public enum Kind {
        GAINED,
        CHANGED,
        CLEARED
    }

    /** A finding before and after. */
    public record FindingChange(Kind kind, Finding before, Finding after) {}

    public Difference {
        sets = List.copyOf(sets);
        estimates = List.copyOf(estimates);
        numbers = List.copyOf(numbers);
        findings = List.copyOf(findings);
    }

    static Difference of(List<Given> sets, List<GaugeEstimate> estimates, Checked before, Checked after) {
        return new Difference(sets, estimates, before, after, numbers(before, after), findings(before, after));
    }

    private static List<NumberChange> numbers(Checked before, Checked after) {
        return numbers(before.report().workings(), after.report().workings());
    }

    /** Worked numbers that come out otherwise. */
    static List<NumberChange> numbers(List<Working> before, List<Working> after) {
        Map<String, Working> old =
                before.stream().collect(Collectors.toMap(Working::id, Function.identity(), (a, b) -> a));
        List<NumberChange> changes = new ArrayList<>();
        for (Working w : after) {
            Working o = old.get(w.id());
            if (o == null || !same(o.value(), w.value())) {
                changes.add(new NumberChange(
                        w.id(), w.title(), o == null ? Measured.notApplicable() : o.value(), w.value()));
            }
        }
        return changes;
    }

    private static boolean same(Measured a, Measured b) {
        if (!a.known() || !b.known()) {
            return a.known() == b.known() && a.applies() == b.applies();
        }
        return Math.abs(a.value() - b.value())
                <= SAME * Math.max(1, Math.max(Math.abs(a.value()), Math.abs(b.value())));
    }

    private static List<FindingChange> findings(Checked before, Checked after) {
        Map<String, Finding> old =
                before.report().findings().all().stream().collect(Collectors.toMap(Finding::id, Function.identity()));
        List<FindingChange> changes = new ArrayList<>();
        for (Finding now : after.report().findings().all()) {
            Finding was = old.get(now.id());
            if (was == null || was.outcome() == now.outcome() && was.weight() == now.weight()) {
                continue;
            }
            boolean cleared = was.warns() && (now.outcome() == Status.PASS || now.outcome() == Status.DOES_NOT_APPLY);
            Kind kind = now.warns() && !was.warns() ? Kind.GAINED : cleared ? Kind.CLEARED : Kind.CHANGED;
            changes.add(new FindingChange(kind, was, now));
        }
        changes.sort(java.util.Comparator.comparing(FindingChange::kind));
        return changes;
    }
}
