package dev.fairlead.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Report;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Stage;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.summary.StageOfWork;
import dev.fairlead.report.text.WorkText;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
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

    @Option(
            names = "--stage",
            paramLabel = "STAGE",
            converter = StageWord.class,
            completionCandidates = StageWord.class,
            description = "Only the numbers of this stage: ${COMPLETION-CANDIDATES}.")
    private Stage stage;

    @Option(names = "--name", paramLabel = "TEXT", description = "Only numbers whose name or heading contains this.")
    private String name = "";

    @Option(names = "--all", description = "Also those that are not known yet, and what is missing for them.")
    private boolean all;

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
        List<Working> wanted = report.workings().stream()
                .filter(w -> stage == null || StageOfWork.of(w.group()) == stage)
                .filter(w ->
                        (w.group() + " " + w.title()).toLowerCase(Locale.ROOT).contains(name.toLowerCase(Locale.ROOT)))
                .toList();
        if (form == PlainForm.json) {
            ArrayNode workings = JsonNodeFactory.instance.arrayNode();
            wanted.forEach(w -> workings.add(ReportJson.working(w)));
            console.out().println(workings.toPrettyString());
        } else {
            List<Working> shown = all
                    ? wanted
                    : wanted.stream().filter(w -> w.value().known()).toList();
            int hidden = wanted.size() - shown.size();
            console.out()
                    .print(WorkText.of(
                                    shown,
                                    checked.subject(),
                                    checker.rulebase().catalogue().sources())
                            + (hidden == 0
                                    ? ""
                                    : "\n" + hidden + (hidden == 1 ? " number is" : " numbers are")
                                            + " not known or do not apply; --all shows them and what is missing.\n")
                            + "\n" + Wrap.hanging("", report.caution()));
        }
        return ExitCode.CLEAN;
    }
}
