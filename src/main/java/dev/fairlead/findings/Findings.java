package dev.fairlead.findings;

import dev.fairlead.model.Case;
import dev.fairlead.model.Waiver;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judgement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The findings of one case, and the waivers that do not hold.
 *
 * @param all one a criterion, in catalogue order
 */
public record Findings(List<Finding> all, List<WaiverNote> waiverNotes) {
    /**
     * The order in which people read: by stage; in a stage stops, cautions, what is not assessed, passes, what does not
     * apply.
     */
    public static final Comparator<Finding> FOR_READING = Findings::asRead;

    public Findings {
        all = List.copyOf(all);
        waiverNotes = List.copyOf(waiverNotes);
    }

    /**
     * Puts a judgement into findings. The catalogue is that of the rulebase that judged; waivers are weighed on
     * {@code day}.
     */
    public static Findings of(Judgement judgement, Catalogue catalogue, List<Waiver> waivers, Optional<LocalDate> day) {
        return of(judgement, catalogue, waivers, day, Missing::of);
    }

    /** The same of a case that is at hand, with its waivers. */
    public static Findings of(Judgement judgement, Catalogue catalogue, Case c, Optional<LocalDate> day) {
        return of(judgement, catalogue, c.waivers(), day, Missing.in(c));
    }

    private static Findings of(
            Judgement judgement,
            Catalogue catalogue,
            List<Waiver> waivers,
            Optional<LocalDate> day,
            Function<String, Missing> missing) {
        FindingMaker maker = new FindingMaker(catalogue, missing);
        Map<String, Ending> endings = new HashMap<>();
        List<CriterionResult> results = judgement.results();
        for (CriterionResult r : results) {
            endings.put(r.criterion().id(), r.ending());
        }
        Waivers waived = new Waivers(catalogue, endings, day);
        waived.apply(waivers);
        List<Finding> all = new ArrayList<>();
        for (CriterionResult r : results) {
            AppliedWaiver by = waived.holding().get(r.criterion().id());
            all.add(by == null ? maker.finding(r) : maker.finding(r).waivedBy(by));
        }
        return new Findings(SharedCauses.told(all, catalogue), waived.notes());
    }

    private static int asRead(Finding a, Finding b) {
        int order = a.stage().compareTo(b.stage());
        order = order != 0 ? order : a.outcome().compareTo(b.outcome());
        return order != 0 ? order : a.weight().compareTo(b.weight());
    }

    /** The findings in the order in which people read them; those that are told under another stand right behind it. */
    public List<Finding> forReading() {
        List<Finding> sorted = new ArrayList<>(all);
        sorted.sort(FOR_READING);
        return grouped(sorted);
    }

    /** In the given order, but for those that are told under another: they stand right behind it. */
    public static List<Finding> grouped(List<Finding> sorted) {
        List<Finding> grouped = new ArrayList<>(sorted.size());
        for (Finding head : sorted) {
            if (head.under().isEmpty()) {
                grouped.add(head);
                sorted.stream().filter(f -> f.under().equals(head.id())).forEach(grouped::add);
            }
        }
        return List.copyOf(grouped);
    }

    /** The finding under which this one is told; itself where it is told on its own. */
    public Finding lead(Finding f) {
        return f.under().isEmpty() ? f : of(f.under());
    }

    /** The finding of a criterion; throws when there is none. */
    public Finding of(String criterion) {
        return all.stream()
                .filter(f -> f.id().equals(criterion))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no finding on " + criterion));
    }

    public Counts counts() {
        int[] weights = new int[Weight.values().length];
        int[] outcomes = new int[Status.values().length];
        int waived = 0;
        int close = 0;
        for (Finding f : all) {
            weights[f.weight().ordinal()]++;
            outcomes[f.outcome().ordinal()]++;
            waived += f.waiver().isPresent() ? 1 : 0;
            close += f.close() ? 1 : 0;
        }
        return new Counts(
                weights[Weight.STOP.ordinal()],
                weights[Weight.CAUTION.ordinal()],
                outcomes[Status.NOT_ASSESSED.ordinal()],
                outcomes[Status.PASS.ordinal()],
                outcomes[Status.DOES_NOT_APPLY.ordinal()],
                waived,
                close);
    }
}
