package dev.fairlead.cli;

import dev.fairlead.intake.BlankCase;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a case to begin with. */
@Command(name = "start", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Write a blank case with every field explained, or a short filled one to see how it looks.")
final class StartCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--minimal", description = "A short filled case instead of the blank one.")
    private boolean minimal;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "Write to this file, which must not exist yet; else to standard output.")
    private Path output;

    StartCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        String text = minimal ? BlankCase.minimal() : BlankCase.text();
        if (output == null) {
            console.out().print(text);
            return ExitCode.CLEAN;
        }
        try {
            Files.writeString(output, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new Main.Stop(ExitCode.USAGE, output + " exists already; name another file, or move it away first.");
        }
        console.err().println("Wrote " + output + ". Fill in what is known, then: check " + output);
        return ExitCode.CLEAN;
    }
}
