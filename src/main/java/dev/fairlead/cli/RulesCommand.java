package dev.fairlead.cli;

import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.language.Scaffold;
import dev.fairlead.rules.verdict.Example;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
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
            @Option(names = "--rules", paramLabel = "DIR", defaultValue = "rules", description = FOLDER) Path rules)
            throws IOException {
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
        if (id != null && rulebase.catalogue().criterion(id) == null) {
            throw new Main.Stop(ExitCode.USAGE, "No criterion is called " + id + ".");
        }
        ExampleFacts base = base(rules);
        int run = 0;
        int differ = 0;
        List<Criterion> wanted = id == null
                ? rulebase.catalogue().criteria()
                : List.of(rulebase.catalogue().criterion(id));
        for (Criterion c : wanted) {
            Path home = rules.resolve(c.folder());
            for (Example example : Files.exists(home.resolve(Example.FILE)) ? Example.in(home) : List.<Example>of()) {
                List<String> differences = example.differences(rulebase.judge(), base);
                run++;
                differ += differences.isEmpty() ? 0 : 1;
                if (!differences.isEmpty()) {
                    console.out().println(c.folder() + ": " + example.name());
                    differences.forEach(d -> console.out().println("    " + d));
                }
            }
        }
        console.out()
                .println((run == 1 ? "1 example" : run + " examples") + " run, " + differ
                        + (differ == 1 ? " differs." : " differ."));
        return differ == 0 && run > 0 ? ExitCode.CLEAN : ExitCode.FINDINGS;
    }

    /** The base facts of the folder, or those that come with the program. */
    private static ExampleFacts base(Path rules) throws IOException {
        Path own = rules.resolve(ExampleFacts.BASE);
        if (Files.exists(own)) {
            return ExampleFacts.base(Files.readString(own));
        }
        String builtIn = Rulebase.baseFacts();
        if (builtIn == null) {
            throw new FileNotFoundException(own + " is not there, and the program holds none");
        }
        return ExampleFacts.base(builtIn);
    }
}
