package dev.fairlead.cli;

import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option that takes another rulebase, or a site's changes to the one that comes with the program. */
final class RulesOption {
    @Option(
            names = "--rules",
            paramLabel = "DIR",
            description =
                    "A rulebase of your own, or an overlay that changes thresholds and texts of the built-in one.")
    private Path folder;

    Rulebase load() {
        return Rulebase.load(folder);
    }
}
