package dev.fairlead.intake.crosscheck;

import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.model.Case;
import dev.fairlead.model.Plan;

/** A stand-off that is planned for both sides and for one side as well: one of them would be passed over. */
final class PlanSlips {
    private PlanSlips() {}

    static void check(Case c, CrossChecks to) {
        Plan p = c.plan();
        if (p.standOff().known() && p.sidedStandOff()) {
            to.error(
                    "/plan/standOff",
                    "either one stand-off for both sides or one for each side",
                    Slips.number(p.standOff().value()) + " mm beside that of a side",
                    "a plan that became a sided one",
                    "take standOff out where standOffLeft and standOffRight say what is planned");
        }
    }
}
