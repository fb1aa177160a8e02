package dev.fairlead.cli;

import dev.fairlead.base.Background;
import dev.fairlead.check.Checker;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The option that takes another rulebase, or a site's changes to the one that comes with the program. */
final class RulesOption {
    @Option(
            names = "--rules",
            paramLabel = "DIR",
            description = {
                "A rulebase of your own, or a site's changes to the built-in one: thresholds.json, such as {\"overjet-after.min\": 2.0},"
                        + " within the range that 'criteria ID' names, and texts in STAGE/CRITERION/criterion.json, such as {\"title\":"
                        + " \"Overjet left\"}; clinic.json holds a clinic's own figures (calibrate). Reports mark every criterion that differs."
            })
    private Path folder;

    /**
     * A checker that measures while the built-in rulebase is loading; rules of one's own may change how it measures.
     */
    Checker checker() {
        return folder == null ? new Checker(Background.start("loading", this::load)) : new Checker(load());
    }

    /** The folder that was named; null for the program's own rules. */
    @Nullable
    Path folder() {
        return folder;
    }

    Rulebase load() {
        return Rulebase.load(folder);
    }
}
