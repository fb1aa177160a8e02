package dev.fairlead.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** Keeps a command from writing over what it reads, and over any other file unless it is told to. */
final class TargetOption {
    @Option(
            names = "--force",
            description = "Write over a file that is there already; what the command reads is never written over.")
    private boolean force;

    /** Ends the command where {@code file} may not be written; {@code inputs} are the names of what it reads. */
    void guard(Path file, Collection<String> inputs) {
        guard(file, inputs, false);
    }

    /** The same; {@code own} says that the file is known to be one that the command made. */
    void guard(Path file, Collection<String> inputs, boolean own) {
        if (file == null) {
            return;
        }
        if (file.toString().equals("-")) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "- is no name of a file to write to: leave the option out for standard output, or write ./- for a file of that name.");
        }
        if (!Files.exists(file)) {
            return;
        }
        for (String input : inputs) {
            if (reads(input, file)) {
                throw new Main.Stop(
                        ExitCode.USAGE,
                        WholeFile.shown(file) + " is read by this command; name another file to write to.");
            }
        }
        if (!force && !own && Files.isRegularFile(file)) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    WholeFile.shown(file) + " exists already; name another file, or add --force to write over it.");
        }
    }

    /** The same for a file that is read, or for the files of a folder that is. */
    private static boolean reads(String input, Path file) {
        try {
            Path read = Path.of(input);
            if (input.equals("-") || !Files.exists(read)) {
                return false;
            }
            if (!Files.isDirectory(read)) {
                return Files.isSameFile(read, file);
            }
            if (!file.toRealPath().startsWith(read.toRealPath())) {
                return false;
            }
            // a report may stand beside the cases of a folder; a case may not be written over
            String name = file.getFileName().toString();
            return Stream.of(".json", ".yaml", ".yml", ".ndjson", ".csv", ".xlsx", ".zip")
                    .anyMatch(name::endsWith);
        } catch (InvalidPathException e) {
            return false;
        } catch (IOException e) {
            throw new Main.Stop(
                    ExitCode.USAGE, WholeFile.shown(file) + ": cannot be looked at (" + WholeFile.why(e) + ").");
        }
    }
}
