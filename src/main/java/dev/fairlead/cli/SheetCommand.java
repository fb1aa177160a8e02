package dev.fairlead.cli;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.findings.Missing;
import dev.fairlead.model.Case;
import dev.fairlead.report.html.FamilySheet;
import dev.fairlead.report.sheet.BenchSheet;
import dev.fairlead.report.sheet.Paper;
import dev.fairlead.report.sheet.ScaleCard;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the bench sheet of a case. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Write the bench sheet of a case: the wire true to size, marks, folds, checklist; as PDF, or its drawings as SVG.")
final class SheetCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            arity = "0..1",
            paramLabel = "CASE",
            description = "A case file, JSON or YAML; - for standard input. --scale-card needs none.")
    private String subject;

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "FILE",
            description = "The sheet, FILE.pdf or FILE.svg; one that is there is replaced with --force.")
    private Path output;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "A4",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private Paper paper;

    @Option(
            names = "--family",
            description = "One page for the family instead: what to expect, what to avoid, when to get help.")
    private boolean family;

    @Option(
            names = "--scale-card",
            description =
                    "Instead a frame of 80 mm to lay round an arch that is photographed; measure takes its scale from it.")
    private boolean scaleCard;

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description = "The day that the sheet bears, such as 2026-10-01; else the day that the case names.")
    private LocalDate date;

    @Mixin
    private TargetOption target;

    @Mixin
    private RulesOption rules;

    SheetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        String ending = output.getFileName() == null
                ? ""
                : output.getFileName().toString().toLowerCase(Locale.ROOT).replaceFirst(".*(\\.[a-z]+)$", "$1");
        if (!ending.equals(".pdf") && !ending.equals(".svg")) {
            throw new Main.Stop(ExitCode.USAGE, output + ": a sheet is a .pdf or an .svg; name the file so.");
        }
        if (scaleCard) {
            return scaleCard(ending);
        }
        if (subject == null) {
            throw new Main.Stop(ExitCode.USAGE, "sheet needs a CASE, or --scale-card.");
        }
        target.guard(output, List.of(subject));
        Named named = Named.read(subject);
        if (!named.reading().read()) {
            named.refuse(console);
            return ExitCode.UNREADABLE;
        }
        if (family) {
            return family(named.reading().value().get(), ending);
        }
        Checker checker = new Checker(rules.load());
        Checked checked = checker.check(
                named.reading().value().get(),
                named.hash(),
                named.reading().problems(),
                new CheckOptions(Optional.ofNullable(date), Optional.empty(), false, Doubting.NONE));
        BenchSheet sheet = new BenchSheet(checker.rulebase().catalogue());
        List<Missing> missing = sheet.refusal(checked);
        if (!missing.isEmpty()) {
            console.err().println(named.name() + ": no sheet, for nothing of the wire can be drawn. Missing:");
            missing.forEach(m -> console.err().println("  " + m.words() + "  " + m.pointer()));
            return ExitCode.UNREADABLE;
        }
        WholeFile.write(
                output,
                ending.equals(".pdf")
                        ? sheet.pdf(checked, paper)
                        : sheet.svg(checked, paper).getBytes(StandardCharsets.UTF_8));
        console.err().println("Wrote " + WholeFile.shown(output) + ". Print it at 100 % and measure its rule first.");
        return ExitCode.CLEAN;
    }

    private Integer scaleCard(String ending) {
        target.guard(output, List.of());
        WholeFile.write(
                output,
                ending.equals(".pdf")
                        ? ScaleCard.pdf(paper)
                        : ScaleCard.svg(paper).getBytes(StandardCharsets.UTF_8));
        console.err()
                .println("Wrote " + WholeFile.shown(output) + ". Print it at 100 % and measure its window by caliper.");
        return ExitCode.CLEAN;
    }

    private Integer family(Case c, String ending) {
        if (!ending.equals(".pdf")) {
            throw new Main.Stop(ExitCode.USAGE, output + ": the page for the family is a .pdf; name the file so.");
        }
        WholeFile.write(output, FamilySheet.pdf(c.id(), paper));
        console.err().println("Wrote " + output + ". Fill in whom to call before you hand it out.");
        return ExitCode.CLEAN;
    }
}
