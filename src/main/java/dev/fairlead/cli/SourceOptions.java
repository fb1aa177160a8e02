package dev.fairlead.cli;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.source.TableOptions;
import dev.fairlead.check.CheckOptions;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options on how many cases are read and run through. */
final class SourceOptions {
    @Option(
            names = "--mapping",
            paramLabel = "FILE",
            description =
                    "How columns of tables become fields of a case (JSON; `start --table -o FILE.json` writes one to begin with). Without it headings are the fields themselves.")
    private Path mapping;

    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            defaultValue = "",
            description = "The sheet of a workbook; else the first with a heading of fields.")
    private String sheet;

    @Option(
            names = "--header-row",
            paramLabel = "N",
            defaultValue = "0",
            description = "The row of a table that names the fields, from 1; else found below a title or cover.")
    private int headingRow;

    @Option(
            names = "--strict",
            description = "A cell that cannot be read refuses its case; else the case counts without that fact.")
    private boolean strict;

    @Option(names = "--threads", paramLabel = "N", description = "Cases judged at once; else one a core.")
    private Integer threads;

    @Option(
            names = "--time-limit",
            paramLabel = "SECONDS",
            defaultValue = "30",
            description = "Give a case up after so long (default ${DEFAULT-VALUE}).")
    private double limit;

    @Option(names = "--progress", description = "Show how far it is, also where there is no terminal.")
    private boolean progress;

    Sources sources(List<Path> paths) throws IOException {
        try {
            return new Sources(paths, tables());
        } catch (TableException e) {
            throw new Main.Stop(ExitCode.USAGE, e.getMessage());
        }
    }

    /** How tables are read. */
    TableOptions tables() throws TableException {
        return new TableOptions(
                mapping == null ? Mapping.NONE : Mapping.read(mapping), sheet, Math.max(0, headingRow), strict);
    }

    Audit.Settings settings(CheckOptions check, Optional<Path> journal) {
        if (threads != null && (threads < 1 || threads > 1024) || !(limit > 0 && limit <= 86_400)) {
            throw new Main.Stop(
                    ExitCode.USAGE, "--threads is from 1 to 1024, and --time-limit above 0 and at most a day.");
        }
        return new Audit.Settings(
                check,
                threads == null ? Audit.Settings.USUAL.threads() : threads,
                Duration.ofNanos((long) (limit * 1e9)),
                journal);
    }

    RunProgress progress(Console console, String what, long bytes) {
        return RunProgress.of(console, progress, what, " MB", 1 << 20, bytes);
    }
}
