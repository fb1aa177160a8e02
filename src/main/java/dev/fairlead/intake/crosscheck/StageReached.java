package dev.fairlead.intake.crosscheck;

import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Visit;

/** Facts of a stage that the case does not say it has reached: they are read, but no criterion looks at them. */
final class StageReached {
    private StageReached() {}

    static void check(Case c, CrossChecks to) {
        Stage found = found(c);
        if (found != null && !c.stage().hasReached(found)) {
            to.doubt(
                    "/stage",
                    found.word() + ", for facts of that stage are recorded (" + where(found) + ")",
                    c.stage().word(),
                    "a stage that was not moved on",
                    "write " + found.word() + "; until then those facts are not judged");
        }
    }

    private static Stage found(Case c) {
        if (c.holding().cemented().known()
                || c.holding().debonded().known()
                || c.holding().impression().known()) {
            return Stage.HOLDING;
        }
        for (Visit v : c.visits()) {
            if (v.date().known()) {
                return Stage.ACTIVATION;
            }
        }
        return c.insertion().date().known() ? Stage.INSERTION : null;
    }

    private static String where(Stage stage) {
        return stage == Stage.HOLDING
                ? "days under holding"
                : stage == Stage.ACTIVATION ? "days of visits" : "the day of insertion";
    }
}
