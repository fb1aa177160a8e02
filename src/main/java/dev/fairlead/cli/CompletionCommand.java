package dev.fairlead.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** Prints what a shell needs to complete commands, options and their words. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        description = "Print completion for bash and zsh; to use it: source <(fairlead completion).")
final class CompletionCommand implements Callable<Integer> {
    private final Console console;

    CompletionCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.out().print(AutoComplete.bash("fairlead", CommandTree.commandLine(console, "")));
        return ExitCode.CLEAN;
    }
}
