package dev.fairlead.cli;

import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.language.Scaffold;
import dev.fairlead.rules.verdict.Examples;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Helps to write criteria: makes the files of a new one, and runs checks and examples without a build. */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        synopsisSubcommandLabel = "new | test",
        description = "Make a new criterion, or run the examples of a rulebase.")
final class RulesCommand {
    private static final String FOLDER = "The rulebase to work on; a folder of your own may hold single criteria.";

    private final Console console;

    RulesCommand(Console console) {
        this.console = console;
    }

    @Command(
            name = "new",
            mixinStandardHelpOptions = true,
            description = "Make the files of a new criterion, with questions to fill in.")
    int make(
            @Parameters(paramLabel = "STAGE/ID", description = "Stage of care and name, such as bench/wire-is-clean.")
                    String folder,
            @Option(names = "--rules", paramLabel = "DIR", defaultValue = "rules", description = FOLDER) Path rules)
            throws IOException {
        try {
            Scaffold.write(rules, folder).forEach(file -> console.out().println(file));
        } catch (RulebaseException | FileAlreadyExistsException e) {
            throw new Main.Stop(ExitCode.USAGE, String.valueOf(e.getMessage()));
        }
        console.out()
                .println("Answer the questions in them, then: rules test " + folder.substring(folder.indexOf('/') + 1));
        return ExitCode.CLEAN;
    }

    @Command(
            name = "test",
            mixinStandardHelpOptions = true,
            description = "Check a rulebase and run its examples, or those of one criterion.")
    int test(
            @Parameters(arity = "0..1", paramLabel = "ID", description = "The criterion; all without it.") String id,
            @Option(names = "--rules", paramLabel = "DIR", defaultValue = "rules", description = FOLDER) Path rules) {
        Rulebase rulebase;
        try {
            rulebase = Rulebase.load(rules);
        } catch (RulebaseException e) {
            e.problems().forEach(p -> console.out().println(Visible.of(p)));
            console.out()
                    .println(e.problems().size() + (e.problems().size() == 1 ? " problem" : " problems")
                            + " in the rulebase; no example was run.");
            return ExitCode.UNREADABLE;
        }
        List<Criterion> criteria = rulebase.catalogue().criteria().stream()
                .filter(c -> id == null || c.id().equals(id))
                .toList();
        if (criteria.isEmpty()) {
            throw new Main.Stop(ExitCode.USAGE, "No criterion is called " + id + ".");
        }
        Examples examples = Examples.in(rules, criteria);
        List<Examples.Differs> differing = examples.differing(rulebase.judge());
        for (Examples.Differs d : differing) {
            console.out()
                    .println(d.example().criterion().folder() + ": "
                            + d.example().name());
            d.differences().forEach(line -> console.out().println("    " + line));
        }
        int run = examples.all().size();
        int differ = differing.size();
        console.out()
                .println((run == 1 ? "1 example" : run + " examples") + " run, " + differ
                        + (differ == 1 ? " differs." : " differ."));
        return differ == 0 && run > 0 ? ExitCode.CLEAN : ExitCode.FINDINGS;
    }
}
