package dev.fairlead.intake.crosscheck;

import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.model.Case;
import java.util.Optional;

/**
 * Looks for facts that contradict each other in ways that a slip of the pen explains; what a criterion judges is left
 * to it.
 */
public final class CrossChecks {
    private final Problems problems;

    private CrossChecks(Problems problems) {
        this.problems = problems;
    }

    public static void run(Case c, Problems problems) {
        CrossChecks to = new CrossChecks(problems);
        DateOrder.check(c, to);
        NumberingTrap.check(c, to);
        SideSwaps.check(c, to);
        VisitSlips.check(c, to);
        OddValues.check(c, to);
        PlanSlips.check(c, to);
        FarDates.check(c, to);
        PersonDoubts.check(c, to);
        if (!c.pictured().isEmpty()) {
            PictureSlips.check(c, to);
        }
    }

    public void error(String pointer, String expected, String found, String slip, String mend) {
        add(Severity.ERROR, pointer, expected, found, slip, mend);
    }

    public void doubt(String pointer, String expected, String found, String slip, String mend) {
        add(Severity.DOUBT, pointer, expected, found, slip, mend);
    }

    private void add(Severity severity, String pointer, String expected, String found, String slip, String mend) {
        problems.add(new Problem(
                severity, pointer, 0, 0, expected, found, slip.isEmpty() ? Optional.empty() : Optional.of(slip), mend));
    }
}
