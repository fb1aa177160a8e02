package dev.fairlead.cli;

import dev.fairlead.intake.spelling.Nearest;
import dev.fairlead.report.text.CriterionText;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the criteria of the rulebase, or explains one. */
@Command(
        name = "criteria",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "List all criteria, or explain one.")
final class CriteriaCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "The criterion to explain; all are listed without it.")
    private String id;

    @Mixin
    private RulesOption rules;

    CriteriaCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Catalogue catalogue = rules.load().catalogue();
        if (id == null) {
            console.out().print(CriterionText.list(catalogue));
            return ExitCode.CLEAN;
        }
        Criterion criterion = catalogue.criterion(id);
        if (criterion == null) {
            String meant = Nearest.of(
                            id, catalogue.criteria().stream().map(Criterion::id).toList())
                    .map(n -> " Is " + n + " meant?")
                    .orElse("");
            throw new Main.Stop(
                    ExitCode.USAGE, "No criterion is called " + id + "." + meant + " `criteria` lists them all.");
        }
        console.out().print(CriterionText.explain(criterion, catalogue));
        return ExitCode.CLEAN;
    }
}
