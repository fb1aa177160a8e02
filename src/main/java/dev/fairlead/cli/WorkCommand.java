package dev.fairlead.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Report;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.text.WorkText;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the worked numbers of a case. */
@Command(
        name = "work",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Print the worked numbers of a case: formula, substituted values, result with error, source.")
final class WorkCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private CaseOption subject;

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private PlainForm form;

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description = "The day for which to work, such as 2026-10-01; else the day that the case names.")
    private LocalDate date;

    @Mixin
    private RulesOption rules;

    WorkCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Named named = subject.read(console);
        Checker checker = new Checker(rules.load());
        Checked checked = checker.check(
                named.reading().value().get(),
                named.hash(),
                named.reading().problems(),
                new CheckOptions(Optional.ofNullable(date), Optional.empty(), true, Doubting.NONE));
        Report report = checked.report();
        if (form == PlainForm.json) {
            ArrayNode workings = JsonNodeFactory.instance.arrayNode();
            report.workings().forEach(w -> workings.add(ReportJson.working(w)));
            console.out().println(workings.toPrettyString());
        } else {
            console.out()
                    .print(WorkText.of(
                                    report.workings(),
                                    checker.rulebase().catalogue().sources()) + "\n"
                            + Wrap.hanging("", report.caution()));
        }
        return ExitCode.CLEAN;
    }
}
