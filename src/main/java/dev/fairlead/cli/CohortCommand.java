package dev.fairlead.cli;

import dev.fairlead.audit.cohort.CohortEffects;
import dev.fairlead.audit.cohort.CohortFiles;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Invents cases with planted faults. */
@Command(
        name = "cohort",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Invent plausible cases with planted faults, and write the truth beside them: for trying out, teaching and tests.",
        footer = {
            "",
            "No case is a child's. One case in seven lacks facts; in the others each fault is",
            "planted at a stated rate. The same number and seed give the same bytes."
        })
final class CohortCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--n", paramLabel = "N", required = true, description = "How many cases.")
    private long n;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Which cases: another seed gives others (default ${DEFAULT-VALUE}).")
    private long seed;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE|DIR",
            description =
                    "A file that ends in .ndjson (truth in FILE.truth.ndjson), or a folder of one file a case (truth in truth.ndjson); else lines on standard output, without the truth.")
    private Path output;

    @Option(
            names = "--effects",
            description =
                    "Eight residents who differ in a known way, gaps, learning, and earlier states of some cases; the truth about them in FILE.effects.txt.")
    private boolean effects;

    @Option(names = "--progress", description = "Show how far it is, also where there is no terminal.")
    private boolean progress;

    CohortCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        if (n < 0) {
            throw new Main.Stop(ExitCode.USAGE, "A cohort has no fewer than 0 cases.");
        }
        try (RunProgress bar = RunProgress.of(console, progress, "Inventing", " cases", 1, n)) {
            write(bar);
        } catch (FileAlreadyExistsException e) {
            throw new Main.Stop(
                    ExitCode.USAGE, e.getMessage() + " exists already; name another file, or move it away first.");
        }
        return ExitCode.CLEAN;
    }

    private void write(RunProgress bar) throws IOException {
        if (effects) {
            if (output == null || !output.toString().endsWith(".ndjson")) {
                throw new Main.Stop(ExitCode.USAGE, "--effects needs a file that ends in .ndjson: -o FILE.");
            }
            Path beside =
                    output.resolveSibling(output.getFileName().toString().replaceFirst("\\.ndjson$", ".effects.txt"));
            try (Writer cases = fresh(output);
                    Writer told = fresh(beside)) {
                told.write(CohortEffects.told());
                CohortFiles.withEffects(n, seed, cases, bar);
            }
            console.err()
                    .println("Wrote " + n + " invented cases to " + output + ", how residents differ to " + beside
                            + ".");
            return;
        }
        if (output == null) {
            Writer out = new BufferedWriter(new OutputStreamWriter(console.out(), StandardCharsets.UTF_8));
            CohortFiles.lines(n, seed, out, Writer.nullWriter(), bar);
            out.flush();
        } else if (output.toString().endsWith(".ndjson") || output.toString().endsWith(".jsonl")) {
            Path truth = CohortFiles.truthBeside(output);
            try (Writer cases = fresh(output);
                    Writer beside = fresh(truth)) {
                CohortFiles.lines(n, seed, cases, beside, bar);
            }
            console.err()
                    .println("Wrote " + n + " invented cases to " + output + ", what was planted to " + truth + ".");
        } else {
            CohortFiles.folder(n, seed, output, bar);
            console.err()
                    .println("Wrote " + n + " invented cases to " + output + ", what was planted to "
                            + output.resolve(CohortFiles.TRUTH) + ".");
        }
    }

    private static Writer fresh(Path file) throws IOException {
        return Files.newBufferedWriter(
                file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }
}
