package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.util.List;

/**
 * What comes next for a case, in one sentence, and why. It says what stands in the way; it permits nothing.
 *
 * @param mark outcome by which it is shown; empty for an ordinary step
 */
public record NextStep(String mark, String step, String reason) {
    static NextStep of(Checked checked, List<SpaceCourse> sides) {
        NextStep step = step(checked, sides);
        long cautions = checked.report().counts().caution();
        // what looks done may still have something open
        return step.mark().equals("stop") || cautions == 0
                ? step
                : new NextStep(
                        step.mark().equals("pass") ? "" : step.mark(),
                        step.step(),
                        step.reason()
                                + (cautions == 1 ? " One caution is open." : " " + cautions + " cautions are open."));
    }

    private static NextStep step(Checked checked, List<SpaceCourse> sides) {
        Case c = checked.subject();
        Report report = checked.report();
        List<Finding> stops = report.findings().all().stream()
                .filter(f -> f.open() && f.weight() == Weight.STOP)
                .toList();
        if (!stops.isEmpty()) {
            Finding first = stops.get(0);
            return new NextStep(
                    "stop",
                    "Let a licensed clinician look before the next step.",
                    (stops.size() == 1 ? "One stop is open: " : stops.size() + " stops are open, first: ")
                            + first.title() + " – " + first.seen());
        }
        if (!report.stages().contains(Stage.ACTIVATION)) {
            long open = report.counts().notAssessed();
            return new NextStep(
                    "",
                    open > 0
                            ? "Complete the records, then go on with care at its stage."
                            : "Go on with care at its stage.",
                    "The case stands before the first activation"
                            + (open == 0
                                    ? "."
                                    : open == 1
                                            ? "; one criterion is not assessed because facts are missing."
                                            : "; " + open + " criteria are not assessed because facts are missing."));
        }
        List<SpaceCourse> lacking =
                sides.stream().filter(s -> s.known() && s.lacking().value() > 0).toList();
        if (sides.stream().allMatch(SpaceCourse::known) && lacking.isEmpty()) {
            return c.holding().cemented().known()
                    ? new NextStep(
                            "pass",
                            "Hold, and keep the recalls.",
                            "Both sides have the space that canine and premolars need, and a holding arch is recorded.")
                    : new NextStep(
                            "pass",
                            "Measure again to confirm, then plan the holding arch; brackets and wire stay until it is cemented.",
                            "On both sides the last reading has reached what canine and premolars need.");
        }
        if (sides.stream().anyMatch(s -> !s.known())) {
            return new NextStep(
                    "not-assessed",
                    "Measure the space on both sides, and record what is missing for the target.",
                    "How much space is lacking cannot be worked out from what the case holds.");
        }
        return activation(c, lacking);
    }

    private static NextStep activation(Case c, List<SpaceCourse> lacking) {
        String where = lacking.size() == 2
                ? "both sides"
                : "the " + lacking.get(0).side().word();
        String reason = String.join(
                ", ",
                lacking.stream()
                        .map(s -> Numbers.text(s.lacking()) + " is lacking on the "
                                + s.side().word())
                        .toList());
        LocalDate last = c.visits().stream()
                .map(Visit::date)
                .filter(d -> d.known())
                .map(d -> d.get())
                .max(LocalDate::compareTo)
                .orElse(null);
        if (last == null || !c.plan().intervalWeeks().known()) {
            return new NextStep(
                    "",
                    "Plan the next activation for " + where + ".",
                    dev.fairlead.web.form.FormWords.capital(reason) + ".");
        }
        LocalDate next = last.plusWeeks(Math.round(c.plan().intervalWeeks().value()));
        return new NextStep(
                "",
                "See the child for the next activation of " + where + " from " + next + ".",
                dev.fairlead.web.form.FormWords.capital(reason) + "; the last visit was on " + last
                        + " and the plan leaves "
                        + Math.round(c.plan().intervalWeeks().value()) + " weeks between activations.");
    }
}
