package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Report;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Status;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Whether the wire may go in, as far as was assessed: what stands against it over all stages up to this one, and what
 * nobody has answered yet. It permits nothing.
 *
 * @param mark outcome by whose colour and shape it is shown
 * @param headline the answer in one line
 * @param open questions of the checklist without an answer
 * @param notAssessed criteria that wait for facts
 */
public record ChairVerdict(
        String mark,
        String headline,
        List<Finding> stops,
        List<Finding> cautions,
        List<String> open,
        List<Finding> notAssessed,
        List<Finding> waived) {
    static ChairVerdict of(Optional<Checked> checked, Checklist checklist) {
        if (checked.isEmpty()) {
            return new ChairVerdict(
                    "stop",
                    "Not yet: the case cannot be read, so nothing is judged",
                    List.of(),
                    List.of(),
                    checklist.open(),
                    List.of(),
                    List.of());
        }
        Report report = checked.get().report();
        List<Finding> reached = report.findings().forReading().stream()
                .filter(f -> f.stage().compareTo(checklist.stage()) <= 0)
                .toList();
        List<Finding> stops = which(reached, f -> f.open() && Panel.mark(f).equals("stop"));
        List<Finding> cautions = which(reached, f -> f.open() && Panel.mark(f).equals("caution"));
        List<Finding> waits = which(
                reached, f -> f.outcome() == Status.NOT_ASSESSED && f.waiver().isEmpty());
        List<Finding> waived = which(reached, f -> f.waiver().isPresent());
        List<String> open = checklist.open();
        List<String> never = new ArrayList<>();
        add(never, stops.size(), "stop", "stops");
        add(never, open.size(), "question open", "questions open");
        add(never, report.errors().size(), "criterion failed in the program", "criteria failed in the program");
        if (!never.isEmpty()) {
            return new ChairVerdict(
                    "stop", "Not yet: " + String.join(", ", never), stops, cautions, open, waits, waived);
        }
        List<String> care = new ArrayList<>();
        add(care, cautions.size(), "caution", "cautions");
        add(care, waits.size(), "criterion not assessed", "criteria not assessed");
        add(care, waived.size(), "finding waived", "findings waived");
        return care.isEmpty()
                ? new ChairVerdict("pass", "Nothing assessed stands against it", stops, cautions, open, waits, waived)
                : new ChairVerdict(
                        "caution", "With care: " + String.join(", ", care), stops, cautions, open, waits, waived);
    }

    /** The faults that decide, in one line: no caution stands among stops, whose number the headline tells. */
    public String faults() {
        return (stops.isEmpty() ? cautions : stops)
                .stream().map(Finding::title).limit(3).collect(Collectors.joining("; "));
    }

    private static List<Finding> which(List<Finding> all, Predicate<Finding> which) {
        return all.stream().filter(which).toList();
    }

    private static void add(List<String> to, int n, String one, String many) {
        if (n > 0) {
            to.add(n + " " + (n == 1 ? one : many));
        }
    }

    /** The stage of a finding where it is not that of the part at hand; empty else. */
    public static String earlier(Finding f, Stage part) {
        return f.stage() == part ? "" : f.stage().word();
    }
}
