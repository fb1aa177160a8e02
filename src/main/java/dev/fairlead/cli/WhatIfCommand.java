package dev.fairlead.cli;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.whatif.Difference;
import dev.fairlead.check.whatif.Search;
import dev.fairlead.check.whatif.TypedChanges;
import dev.fairlead.check.whatif.WhatIf;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.report.json.WhatIfJson;
import dev.fairlead.report.text.WhatIfText;
import dev.fairlead.rules.verdict.Rulebase;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Searches other plans of a case, or shows what a change of it does. */
@Command(
        name = "whatif",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Find the smallest changes of the plan that clear the warnings of a case; with --set, show what a change of your own does.")
final class WhatIfCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private CaseOption subject;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            arity = "1",
            description =
                    "Show numbers and findings before and after this change, such as plan.standOff=1.5 or '/visits/0/left/gapOpened=0.8 mm'; may be"
                            + " given several times. An empty value makes a fact unknown.")
    private List<String> sets = List.of();

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private PlainForm form;

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

    @Mixin
    private RulesOption rules;

    WhatIfCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Named named = subject.read(console);
        Case c = named.reading().value().get();
        Rulebase rulebase = rules.load();
        CheckOptions options =
                new CheckOptions(Optional.ofNullable(date), Optional.ofNullable(stage), !sets.isEmpty(), Doubting.NONE);
        if (sets.isEmpty()) {
            WhatIf found = new Search(rulebase, Calculations.full().of(rulebase.clinic())).of(c, named.hash(), options);
            console.out()
                    .print(
                            form == PlainForm.json
                                    ? WhatIfJson.of(found).toPrettyString() + "\n"
                                    : WhatIfText.of(found));
            return ExitCode.CLEAN;
        }
        try {
            Difference d = TypedChanges.difference(c, named.hash(), sets, new Checker(rulebase), options);
            console.out().print(form == PlainForm.json ? WhatIfJson.of(d).toPrettyString() + "\n" : WhatIfText.of(d));
            return ExitCode.CLEAN;
        } catch (TypedChanges.Refused e) {
            console.err().println("Nothing was tried:");
            e.problems().forEach(p -> console.err().print(dev.fairlead.drawing.Wrap.hanging("  ", p)));
            return ExitCode.USAGE;
        }
    }
}
