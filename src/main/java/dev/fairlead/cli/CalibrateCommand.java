package dev.fairlead.cli;

import dev.fairlead.audit.outcome.ClinicFigures;
import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.write.OutturnText;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.model.Clinic;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Learns from a clinic's own finished cases how teeth answer there. */
@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "From cases that reached holding: how far incisors tip, space grows and a wire runs down in your own hands, as an overlay for --rules, so that intervals fit your clinic.",
        footer = {
            "",
            "The figures are drawn towards the published ones by how few the cases are;",
            "one with fewer than 15 cases stays as published."
        })
final class CalibrateCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            arity = "1..*",
            paramLabel = "PATH",
            description =
                    "Folders, case files, files of one case a line (.ndjson), tables (.csv, .xlsx) and archives (.zip).")
    private List<Path> paths;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "OVERLAY",
            required = true,
            description = "A folder for --rules: clinic.json is written into it, beside changes that it may hold.")
    private Path output;

    @Mixin
    private SourceOptions source;

    @Mixin
    private TargetOption target;

    CalibrateCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Path file = output.resolve(RuleFiles.CLINIC);
        target.guard(file, paths.stream().map(Path::toString).toList());
        if (Files.exists(output.resolve(RuleFiles.RULEBASE))) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    output + " is a rulebase of its own and no overlay; name another folder to write to.");
        }
        Checker checker = new Checker(Rulebase.builtIn());
        CheckOptions options = CheckOptions.USUAL.withoutWorkings().withoutForces();
        Sources sources = source.sources(paths);
        Outturn.Counter[] counter = new Outturn.Counter[1];
        long[] unread = new long[1];
        try (RunProgress bar = source.progress(console, "Calibrating", sources.size())) {
            new Audit(checker, source.settings(options, Optional.empty()))
                    .run(
                            sources,
                            () -> {
                                counter[0] = new Outturn.Counter();
                                unread[0] = 0;
                                return done -> {
                                    unread[0] += done.row().judged() ? 0 : 1;
                                    if (done.row().judged() && !done.row().superseded()) {
                                        counter[0].add(
                                                done.row().resident(),
                                                done.row().details().attained());
                                    }
                                };
                            },
                            bar);
        }
        Outturn outturn = counter[0].outturn();
        Optional<ClinicFigures> figures = ClinicFigures.of(outturn);
        if (figures.isEmpty()) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    outturn.cases() + (outturn.cases() == 1 ? " case tells" : " cases tell")
                            + " how it came out; a clinic's own figures need " + Clinic.FEWEST
                            + " that reached holding, with space or inclination measured at the end. Nothing was written.");
        }
        try {
            Files.createDirectories(output);
        } catch (IOException e) {
            throw new Main.Stop(ExitCode.USAGE, output + ": the folder cannot be made (" + WholeFile.why(e) + ").");
        }
        WholeFile.write(file, OutturnText.overlay(figures.get().clinic()).getBytes(StandardCharsets.UTF_8));
        console.out().print(OutturnText.of(figures.get()));
        console.err().println("Wrote " + file + ": check with --rules " + output + ".");
        if (unread[0] > 0) {
            console.err().println(unread[0] + (unread[0] == 1 ? " case was" : " cases were") + " not read.");
        }
        return unread[0] > 0 ? ExitCode.UNREADABLE : ExitCode.CLEAN;
    }
}
