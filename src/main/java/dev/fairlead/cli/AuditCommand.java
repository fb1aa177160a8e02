package dev.fairlead.cli;

import dev.fairlead.audit.agree.BlindSample;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.MappingProposal;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.audit.write.ProblemSink;
import dev.fairlead.audit.write.RowSink;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Version;
import dev.fairlead.findings.RulebaseUsed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Audits many cases. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Judge many cases and tell what they show together: which criteria fail, where, how often, and what waits for data.")
final class AuditCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            arity = "1..*",
            paramLabel = "PATH",
            description =
                    "Folders, case files, files of one case a line (.ndjson), tables (.csv, .xlsx) and archives (.zip).")
    private List<Path> paths;

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private AuditForm form;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Write to this file; else to standard output.")
    private Path output;

    @Option(
            names = "--resume",
            description =
                    "Keep a journal beside the output while it runs, and go on from there when an earlier run was cut off.")
    private boolean resume;

    @Option(
            names = "--cases",
            paramLabel = "N",
            defaultValue = "200",
            description =
                    "How many cases the report tells one by one, those first that need a look (default ${DEFAULT-VALUE}).")
    private int looks;

    @Option(
            names = "--pages",
            paramLabel = "DIR",
            description =
                    "Also write the full report of each of these cases into this folder; the HTML report links to them.")
    private Path pages;

    @Option(
            names = "--problems",
            paramLabel = "FILE",
            description =
                    "Also write every case that was not judged and every cell that was lost into this table (CSV).")
    private Path problems;

    @Option(
            names = "--propose-mapping",
            paramLabel = "FILE",
            description =
                    "Judge nothing: write a mapping for the headings of the table that is named, to be read and corrected.")
    private Path proposal;

    @Option(
            names = "--sample",
            paramLabel = "N",
            description =
                    "Draw N cases for reviewers, without the program's verdicts: a table to fill in, which --verdicts reads.")
    private int sample;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Which cases --sample draws (default ${DEFAULT-VALUE}).")
    private long seed;

    @Option(
            names = "--truth",
            paramLabel = "FILE",
            description = "What was planted in invented cases: tells how well each criterion finds it.")
    private Path truth;

    @Option(
            names = "--verdicts",
            paramLabel = "FILE",
            description =
                    "Reviewers' own verdicts (CSV or XLSX with case, verdict and perhaps criterion and reviewer): tells how far they agree.")
    private Path verdicts;

    @Option(
            names = "--fail-on",
            paramLabel = "WEIGHT",
            defaultValue = "warn",
            description =
                    "From which findings on to exit with 4: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}). Waived findings do not count.")
    private CheckCommand.FailOn failOn;

    @Mixin
    private SourceOptions source;

    @Mixin
    private CheckingOptions checking;

    @Mixin
    private TargetOption target;

    @Mixin
    private RulesOption rules;

    AuditCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        List<String> read = new ArrayList<>(paths.stream().map(Path::toString).toList());
        Stream.of(truth, verdicts).filter(Objects::nonNull).map(Path::toString).forEach(read::add);
        // one that is resumed was begun by an earlier run of this command
        target.guard(output, read, resume);
        target.guard(problems, read);
        target.guard(proposal, read);
        if (proposal != null) {
            return propose();
        }
        if (sample > 0) {
            return draw();
        }
        if (output == null && (resume || form.binary())) {
            throw new Main.Stop(
                    ExitCode.USAGE, (resume ? "--resume" : "--format " + form) + " needs an output file: -o FILE.");
        }
        Checker checker = new Checker(rules.load());
        Sources sources = source.sources(paths);
        Optional<Path> journal =
                resume ? Optional.of(output.resolveSibling(output.getFileName() + ".journal")) : Optional.empty();
        Heading heading = new Heading(
                Version.ofProgram(),
                RulebaseUsed.of(checker.rulebase()),
                checking.day(),
                checking.stage(),
                checking.forces(),
                paths.stream().map(Path::toString).toList(),
                sources.passedOver());
        try (AuditOutput to = new AuditOutput(console, form, output);
                Progress bar = source.progress(console, "Auditing", sources.size())) {
            Pass[] pass = new Pass[1];
            new Audit(checker, source.settings(checking.options(), journal))
                    .run(
                            sources,
                            () -> {
                                pass[0] = new Pass(checker, to, heading);
                                return pass[0];
                            },
                            bar);
            Summary summary = pass[0].summary(heading);
            String links = pages == null ? "" : CasePages.write(pages, output, summary, checker, checking.options());
            to.summary(checker, checking.options(), heading, summary, pass[0].extras, links);
            return code(summary);
        } catch (UncheckedIOException e) {
            throw unwritable(e.getCause());
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /** What cannot be read is told as a row; what is left is the output. */
    private Main.Stop unwritable(IOException e) {
        return new Main.Stop(
                ExitCode.USAGE,
                (output == null ? "the output" : output.toString()) + " cannot be written ("
                        + e.getClass().getSimpleName() + ": " + e.getMessage() + "); nothing was left half written.");
    }

    /** One run through all cases; the last one counts. */
    private final class Pass implements Consumer<Audit.Done> {
        private final Tally tally;
        private final AuditExtras extras;
        private final List<RowSink> sinks;

        Pass(Checker checker, AuditOutput to, Heading heading) {
            try {
                tally = new Tally(checker, looks);
                extras = AuditExtras.read(truth, verdicts, checker.rulebase().catalogue());
                sinks = new ArrayList<>(to.sinks(checker, heading));
                if (problems != null) {
                    sinks.add(new ProblemSink(Files.newBufferedWriter(problems, StandardCharsets.UTF_8)));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void accept(Audit.Done done) {
            tally.add(done);
            extras.add(done);
            try {
                for (RowSink s : sinks) {
                    s.row(done.row());
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        Summary summary(Heading heading) throws IOException {
            Summary summary = tally.summary();
            for (RowSink s : sinks) {
                s.end(heading, summary);
                if (s instanceof ProblemSink) {
                    s.close();
                }
            }
            return summary;
        }
    }

    private int draw() throws IOException {
        Checker checker = new Checker(rules.load());
        BlindSample[] drawn = new BlindSample[1];
        new Audit(checker, source.settings(checking.options(), Optional.empty()))
                .run(
                        source.sources(paths),
                        () -> {
                            drawn[0] = new BlindSample(sample, seed);
                            return done -> drawn[0].add(done.row());
                        },
                        n -> {});
        String table = drawn[0].table(checker.rulebase().catalogue());
        if (output == null) {
            console.out().print(table);
        } else {
            WholeFile.write(output, table.getBytes(StandardCharsets.UTF_8));
        }
        console.err()
                .println("Drew " + drawn[0].size() + " cases. Each reviewer fills in a copy: code under reviewer, and"
                        + " pass, caution, stop, not-assessed or does-not-apply under verdict.");
        return drawn[0].size() == 0 ? ExitCode.UNREADABLE : ExitCode.CLEAN;
    }

    private int propose() throws IOException {
        try {
            MappingProposal p = MappingProposal.of(paths.get(0), source.tables());
            WholeFile.write(proposal, p.json().getBytes(StandardCharsets.UTF_8));
            p.matched().forEach((heading, field) -> console.err().println("  " + heading + "  ->  " + field));
            if (!p.unmatched().isEmpty()) {
                console.err().println("No field found, so ignored: " + String.join(", ", p.unmatched()));
            }
            p.unsure().forEach(u -> console.err().println("To be settled: " + u));
            console.err().println("Wrote " + proposal + ": read it, correct it, then audit with --mapping " + proposal);
            return ExitCode.CLEAN;
        } catch (TableException e) {
            throw new Main.Stop(ExitCode.USAGE, paths.get(0) + ": " + e.getMessage());
        }
    }

    private int code(Summary s) {
        if (s.failed().any() || s.errors().any()) {
            return ExitCode.OWN_ERROR;
        }
        if (s.notJudged() > 0 || nothing(s)) {
            return ExitCode.UNREADABLE;
        }
        long stops = s.stages().stream().mapToLong(c -> c.stop()).sum();
        long cautions = s.stages().stream().mapToLong(c -> c.caution()).sum();
        boolean fails = switch (failOn) {
            case warn -> stops + cautions > 0;
            case stop -> stops > 0;
            case never -> false;
        };
        return fails ? ExitCode.FINDINGS : ExitCode.CLEAN;
    }

    /** Says so where there was no case at all: an empty audit must not look like a clean one. */
    private boolean nothing(Summary s) {
        if (s.judged() > 0) {
            return false;
        }
        console.err()
                .println("No case was found in "
                        + paths.stream().map(Path::toString).collect(Collectors.joining(", "))
                        + "; an audit looks for .json, .yaml, .yml, .ndjson, .csv, .xlsx and .zip.");
        return true;
    }
}
