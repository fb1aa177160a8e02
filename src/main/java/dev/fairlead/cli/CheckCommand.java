package dev.fairlead.cli;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.model.Stage;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.text.ReportText;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks cases and prints what was found. */
@Command(name = "check", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Check cases: warnings first, then what is missing, then what passes.")
final class CheckCommand implements Callable<Integer> {
    /** Forms of output. */
    enum Form { text, json }

    /** From which weight on findings count as failure. */
    enum FailOn { warn, stop, never }

    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "CASE", description = "Case files, JSON or YAML; - for standard input.")
    private List<String> cases;

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "text", description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private Form form;

    @Option(names = "--fail-on", paramLabel = "WEIGHT", defaultValue = "warn",
            description = "From which findings on to exit with 4: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}). Waived findings do not count.")
    private FailOn failOn;

    @Option(names = "--stage", paramLabel = "STAGE", converter = StageWord.class, completionCandidates = StageWord.class,
            description = "Judge as if the case stood at this stage: ${COMPLETION-CANDIDATES}.")
    private Stage stage;

    @Option(names = "--date", paramLabel = "DAY", description = "The day for which to judge, such as 2026-10-01; else the day that the case names.")
    private LocalDate date;

    @Option(names = "--all", description = "Also list what does not apply, and why.")
    private boolean all;

    @Mixin
    private RulesOption rules;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Checker checker = new Checker(Background.start(rules::load));
        CheckOptions options = new CheckOptions(Optional.ofNullable(date), Optional.ofNullable(stage), form != Form.text);
        int code = ExitCode.CLEAN;
        boolean first = true;
        for (String name : cases) {
            Named named = Named.read(name);
            if (!named.reading().read()) {
                named.refuse(console);
                code = worse(code, ExitCode.UNREADABLE);
                continue;
            }
            Checked checked = checker.check(named.reading().value().get(), named.hash(), named.reading().problems(), options);
            if (form == Form.text) {
                console.out().print((first ? "" : "\n" + "=".repeat(80) + "\n\n") + ReportText.of(checked.report(), all));
            } else {
                console.out().print(ReportJson.text(checked.report(), all));
            }
            first = false;
            code = worse(code, codeOf(checked));
        }
        return code;
    }

    private int codeOf(Checked checked) {
        if (!checked.report().errors().isEmpty()) {
            return ExitCode.OWN_ERROR;
        }
        boolean fails = checked.report().findings().all().stream().anyMatch(f -> f.open() && switch (failOn) {
            case warn -> true;
            case stop -> f.weight() == dev.fairlead.findings.Weight.STOP;
            case never -> false;
        });
        return fails ? ExitCode.FINDINGS : ExitCode.CLEAN;
    }

    /** Our own error outweighs an unreadable case, and that outweighs findings: the caller must not take a part for the whole. */
    private static int worse(int a, int b) {
        List<Integer> rising = List.of(ExitCode.CLEAN, ExitCode.FINDINGS, ExitCode.UNREADABLE, ExitCode.OWN_ERROR);
        return rising.get(Math.max(rising.indexOf(a), rising.indexOf(b)));
    }
}
