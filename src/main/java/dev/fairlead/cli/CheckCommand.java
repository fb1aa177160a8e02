package dev.fairlead.cli;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Weight;
import dev.fairlead.measure.uncertainty.Simulation;
import dev.fairlead.model.Stage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks cases and prints what was found. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Check cases: warnings first, then what is missing, then what passes.")
final class CheckCommand implements Callable<Integer> {
    /** More draws than that sharpen nothing that errors of measurement have not blurred. */
    private static final int MOST_DRAWS = 1_000_000;

    /** Forms of output. */
    enum Form {
        text,
        json,
        html,
        pdf
    }

    /** How much of a report a PDF holds. */
    enum Pages {
        all,
        one
    }

    /** From which weight on findings count as failure. */
    enum FailOn {
        warn,
        stop,
        never
    }

    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "CASE", description = "Case files, JSON or YAML; - for standard input.")
    private List<String> cases;

    @Option(
            names = "--format",
            paramLabel = "FORM",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private Form form = Form.text;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = {
                "Write to this file, - for standard output (the default; PDF needs a file or -).",
                "Several cases as html or pdf become one file with a list of contents; where FILE is a folder, or ends with a slash, each case becomes a file there, named by its id."
            })
    private String output;

    @Option(
            names = "--fail-on",
            paramLabel = "WEIGHT",
            description =
                    "From which findings on to exit with 4: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}). Waived findings do not count.")
    private FailOn failOn = FailOn.warn;

    @Option(
            names = "--stage",
            paramLabel = "STAGE",
            converter = StageWord.class,
            completionCandidates = StageWord.class,
            description = "Judge as if the case stood at this stage: ${COMPLETION-CANDIDATES}.")
    private Stage stage;

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description = "The day for which to judge, such as 2026-10-01; else the day that the case names.")
    private LocalDate date;

    @Option(
            names = "--all",
            description = "Also list each pass, all that is missing, and what does not apply, and why.")
    private boolean all;

    @Option(
            names = "--pages",
            paramLabel = "HOW",
            description =
                    "Of PDF: ${COMPLETION-CANDIDATES} pages; one holds what a case is presented with (default ${DEFAULT-VALUE}).")
    private Pages pages = Pages.all;

    @Option(names = "--brief", description = "In text: the headline and what decides, in 20 lines.")
    private boolean brief;

    @Option(
            names = "--draws",
            paramLabel = "N",
            description =
                    "Work chances out by N random sets of measurement errors, the case measured and judged anew with each (2000 is plenty); 0"
                            + " propagates errors to first order alone. Without it first order is corrected by a few draws.")
    private Integer draws;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "Seed of the draws; the same seed gives the same report (default ${DEFAULT-VALUE}).")
    private long seed = Simulation.USUAL_SEED;

    @Mixin
    private TargetOption target = new TargetOption();

    @Mixin
    private RulesOption rules = new RulesOption();

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Output to = new Output(
                console,
                form,
                Optional.ofNullable(output),
                all,
                brief,
                pages == Pages.one,
                file -> target.guard(file, cases));
        Checker checker = rules.checker();
        CheckOptions options =
                new CheckOptions(Optional.ofNullable(date), Optional.ofNullable(stage), form != Form.text, doubting());
        int code = ExitCode.CLEAN;
        for (String name : cases) {
            Named named = Named.read(name);
            if (!named.reading().read()) {
                named.refuse(console);
                to.refused(named);
                code = worse(code, ExitCode.UNREADABLE);
                continue;
            }
            // plain text does not show the hash, and to make the first one takes some part of a short check
            String hash = form == Form.text ? "" : named.hash();
            Checked checked = checker.check(
                    named.reading().value().get(), hash, named.reading().problems(), options);
            to.add(checked, named.changes());
            code = worse(code, codeOf(checked));
        }
        to.finish();
        return code;
    }

    private Doubting doubting() {
        if (draws != null && (draws < 0 || draws > MOST_DRAWS)) {
            throw new Main.Stop(ExitCode.USAGE, "--draws takes 0 to " + MOST_DRAWS + ", not " + draws + ".");
        }
        return draws == null ? Doubting.CORRECTED : draws == 0 ? Doubting.FIRST_ORDER : Doubting.drawn(draws, seed);
    }

    private int codeOf(Checked checked) {
        if (!checked.report().errors().isEmpty()) {
            return ExitCode.OWN_ERROR;
        }
        for (Finding f : checked.report().findings().all()) {
            boolean fails = f.open()
                    && switch (failOn) {
                        case warn -> true;
                        case stop -> f.weight() == Weight.STOP;
                        case never -> false;
                    };
            if (fails) {
                return ExitCode.FINDINGS;
            }
        }
        return ExitCode.CLEAN;
    }

    /**
     * Our own error outweighs an unreadable case, and that outweighs findings: the caller must not take a part for the
     * whole.
     */
    private static int worse(int a, int b) {
        List<Integer> rising = List.of(ExitCode.CLEAN, ExitCode.FINDINGS, ExitCode.UNREADABLE, ExitCode.OWN_ERROR);
        return rising.get(Math.max(rising.indexOf(a), rising.indexOf(b)));
    }
}
