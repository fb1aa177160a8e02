package dev.fairlead.cli;

import dev.fairlead.audit.agree.BlindSample;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.LastAudit;
import dev.fairlead.audit.run.Recoder;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.audit.write.RowSink;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Version;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.intake.spelling.Visible;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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
            names = "--feedback",
            paramLabel = "DIR",
            description = "Also write one page of feedback for each resident into this folder (PDF).")
    private Path feedback;

    @Option(
            names = "--since",
            paramLabel = "FILE",
            description = "Output of an earlier audit (--format ndjson): tells which warnings are new since.")
    private Path since;

    @Option(
            names = "--recode",
            description =
                    "For sharing: new codes for cases, residents and sites, days shifted alike, counts under 5 left out. Goes with --format json, csv, ndjson or parquet.")
    private boolean recode;

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
                    "Judge nothing: write a mapping for the headings of the table that is named, to be read and corrected; - for standard output.")
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
        Stream.of(truth, verdicts, since)
                .filter(Objects::nonNull)
                .map(Path::toString)
                .forEach(read::add);
        // one that is resumed was begun by an earlier run of this command
        target.guard(output, read, resume);
        target.guard(problems, read);
        if (proposal != null) {
            if (!MappingProposals.toOutput(proposal)) {
                target.guard(proposal, read);
            }
            return MappingProposals.write(console, paths.get(0), proposal, source);
        }
        if (sample > 0) {
            return draw();
        }
        if (output == null && (resume || form.binary())) {
            throw new Main.Stop(
                    ExitCode.USAGE, (resume ? "--resume" : "--format " + form) + " needs an output file: -o FILE.");
        }
        Checker checker = new Checker(rules.load());
        if (recode) {
            recodeAllowed();
        }
        Sources sources = source.sources(paths);
        Optional<Path> journal =
                resume ? Optional.of(output.resolveSibling(output.getFileName() + ".journal")) : Optional.empty();
        Heading heading = new Heading(
                Version.ofProgram(),
                RulebaseUsed.of(checker.rulebase()),
                checking.day(),
                checking.stage(),
                checking.forces(),
                recode
                        ? List.of("cases with new codes")
                        : paths.stream().map(Path::toString).toList(),
                recode ? List.of() : sources.passedOver());
        @Nullable Recoder recoder = recode ? counted(checker) : null;
        LastAudit last = last(checker);
        try (AuditOutput to = new AuditOutput(console, form, output);
                ProblemsFile listed = problems == null ? null : new ProblemsFile(problems);
                RunProgress bar = source.progress(console, "Auditing", sources.size())) {
            Pass[] pass = new Pass[1];
            Audit.Settings settings = source.settings(checking.options(), journal);
            new Audit(checker, form.numbers() ? settings.withNumbers() : settings)
                    .run(
                            sources,
                            () -> {
                                pass[0] = new Pass(checker, to, listed, heading, recoder, last);
                                return pass[0];
                            },
                            bar);
            Summary summary = pass[0].summary(heading);
            String links = pages == null
                    ? ""
                    : CasePages.write(
                            pages, output, summary, checker, checking.options(), file -> target.guard(file, read));
            if (feedback != null) {
                int sheets = FeedbackSheets.write(feedback, heading, summary, file -> target.guard(file, read));
                console.err()
                        .println("Wrote " + sheets + (sheets == 1 ? " sheet" : " sheets") + " to " + feedback + ".");
            }
            to.recoded(recode);
            to.summary(checker, checking.options(), heading, summary, pass[0].extras, links);
            return code(summary);
        } catch (UncheckedIOException e) {
            throw unwritable(Objects.requireNonNull(e.getCause()));
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /** What is shared holds no case told one by one, and no table of few. */
    private void recodeAllowed() {
        boolean rows = form == AuditForm.csv || form == AuditForm.ndjson || form == AuditForm.parquet;
        if (!rows && form != AuditForm.json
                || Stream.of(pages, feedback, problems, truth, verdicts, since).anyMatch(Objects::nonNull)
                || resume) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "--recode goes with --format json (a summary without small counts), csv, ndjson or parquet (rows), and not"
                            + " with --pages, --feedback, --problems, --truth, --verdicts, --since or --resume.");
        }
    }

    /** Residents and sites are counted before the first row is written: those with few cases lose their code. */
    private Recoder counted(Checker checker) throws IOException {
        Recoder[] made = new Recoder[1];
        new Audit(checker, source.settings(checking.options(), Optional.empty()))
                .run(
                        source.sources(paths),
                        () -> {
                            made[0] = new Recoder();
                            return done -> made[0].count(done.row());
                        },
                        n -> {});
        return made[0];
    }

    private @Nullable LastAudit last(Checker checker) throws IOException {
        try {
            return since == null
                    ? null
                    : LastAudit.read(since, checker.rulebase().catalogue());
        } catch (TableException e) {
            throw new Main.Stop(ExitCode.USAGE, e.getMessage());
        } catch (java.nio.file.NoSuchFileException e) {
            throw new Main.Stop(ExitCode.USAGE, since + ": there is no such file");
        }
    }

    /** What cannot be read is told as a row; what is left is the output. */
    private Main.Stop unwritable(IOException e) {
        if (e instanceof FileAlreadyExistsException other) {
            return new Main.Stop(
                    ExitCode.USAGE, Visible.of(other.getFile()) + " is there and is " + other.getReason() + ".");
        }
        return new Main.Stop(
                ExitCode.USAGE,
                (output == null ? "The output" : WholeFile.shown(output)) + " cannot be written (" + WholeFile.why(e)
                        + ").");
    }

    /** One run through all cases; the last one counts. */
    private final class Pass implements Consumer<Audit.Done> {
        private final Tally tally;
        private final AuditExtras extras;
        private final List<RowSink> sinks;
        private final @Nullable Recoder recoder;

        Pass(
                Checker checker,
                AuditOutput to,
                @Nullable ProblemsFile listed,
                Heading heading,
                @Nullable Recoder recoder,
                @Nullable LastAudit last) {
            this.recoder = recoder;
            try {
                tally = new Tally(checker, looks, last);
                extras = AuditExtras.read(truth, verdicts, checker.rulebase().catalogue());
                sinks = new ArrayList<>(to.sinks(checker, heading));
                if (listed != null) {
                    sinks.add(listed.empty());
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void accept(Audit.Done judged) {
            Audit.Done done = recoder == null ? judged : new Audit.Done(recoder.of(judged.row()), judged.item());
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
