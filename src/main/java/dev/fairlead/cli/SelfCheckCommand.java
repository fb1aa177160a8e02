package dev.fairlead.cli;

import dev.fairlead.base.Background;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.Version;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.BlankCase;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.mechanics.element.BeamFrame;
import dev.fairlead.measure.mechanics.element.SectionStiffness;
import dev.fairlead.measure.mechanics.solver.Equilibrium;
import dev.fairlead.measure.mechanics.solver.FrameSolver;
import dev.fairlead.model.Case;
import dev.fairlead.report.html.ReportPdf;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.pdf.PdfWriter;
import dev.fairlead.report.sheet.Paper;
import dev.fairlead.report.sheet.ScaleCard;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.engine.RuleCache;
import dev.fairlead.rules.verdict.Examples;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Looks whether the program works on this machine, one line for each thing looked at. */
@Command(
        name = "self-check",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Look whether the program works on this machine: rules and all their examples, judging, beam model, reading and writing, cache, folders, PDF and fonts.")
final class SelfCheckCommand implements Callable<Integer> {
    private static final String WATCHED = "overjet-after";

    private final Console console;
    private boolean failed;

    @Mixin
    private RulesOption rules;

    SelfCheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        look(
                "program",
                () -> Version.ofProgram() + ", Java " + Runtime.version() + ", " + System.getProperty("os.name"));
        look("rulebase", this::rulebase);
        // what takes longest begins first, and beside the rest
        Supplier<String> pdf = Background.start("PDF", this::pdf);
        Supplier<String> examples = Background.start("examples", this::examples);
        look("judging", this::judging);
        look("beam model", SelfCheckCommand::beam);
        look("reading and writing", SelfCheckCommand::writing);
        look("cache of compiled rules", SelfCheckCommand::cache);
        look("working folder", () -> writable(Path.of("").toAbsolutePath()));
        look("folder for drafts", () -> writable(Path.of(System.getProperty("java.io.tmpdir"))));
        look("examples", examples::get);
        look("PDF and fonts", pdf::get);
        return failed ? ExitCode.OWN_ERROR : ExitCode.CLEAN;
    }

    private void look(String what, Callable<String> how) {
        String told;
        try {
            told = "works   " + what + ": " + how.call();
        } catch (Exception | LinkageError e) {
            // a Java without its libraries for fonts fails by the latter
            failed = true;
            told = "FAILS   " + what + ": "
                    + (e instanceof IOException io
                            ? WholeFile.why(io)
                            : e instanceof LinkageError ? e.toString() : String.valueOf(e.getMessage()));
        }
        console.out().println(told);
    }

    private String rulebase() {
        Rulebase loaded = rules.load();
        RulebaseUsed used = RulebaseUsed.of(loaded);
        return used.version() + " " + used.hash().substring(0, 8) + ", "
                + loaded.catalogue().criteria().size() + " criteria";
    }

    /** Every example ends as it says it does; a site's folder without any leaves those of the program, by its rules. */
    private String examples() {
        Path folder = rules.folder();
        Rulebase tried = rules.load();
        Examples examples = Examples.in(folder, tried.catalogue().criteria());
        String whose = "";
        if (folder != null && examples.all().isEmpty()) {
            tried = Rulebase.builtIn();
            examples = Examples.in(null, tried.catalogue().criteria());
            whose = " by the program's own rules, for " + Visible.of(folder.toString()) + " holds no example";
        }
        List<Examples.Differs> differing = examples.differing(tried.judge());
        if (!differing.isEmpty()) {
            Examples.Differs first = differing.get(0);
            throw new IllegalStateException(
                    differing.size() + " of " + examples.all().size() + " differ"
                            + (differing.size() == 1 ? "s: " : ", the first is ")
                            + first.example().criterion().folder() + ": "
                            + first.example().name() + ": "
                            + first.differences().get(0));
        }
        return "all " + examples.all().size() + " end as they say" + whose;
    }

    /** A case ends the same twice, and a hazard put into it is told. */
    private String judging() throws Exception {
        Checked once = checked(example());
        if (!once.report().errors().isEmpty()) {
            throw new IllegalStateException("rules ended with an error of their own");
        }
        if (!ReportJson.text(once.report(), true)
                .equals(ReportJson.text(checked(example()).report(), true))) {
            throw new IllegalStateException("the same case ends differently when it is judged again");
        }
        CaseTree spoilt = CaseTree.of(example());
        spoilt.set("/bite/overjet", "0.5");
        Case hazard = spoilt.read("example").value().orElseThrow();
        if (outcome(once) != Status.PASS || outcome(checked(hazard)) != Status.WARN) {
            throw new IllegalStateException("an overjet too small for the plan is not told");
        }
        return "the same twice, a planted fault is told";
    }

    /** Held to a formula of every handbook: the tip of a cantilever goes F L^3 / 3 E I, and turns F L^2 / 2 E I. */
    private static String beam() {
        int pieces = 8;
        double length = 12;
        SectionStiffness wire = new SectionStiffness(3.6e4, 590, 590, 450);
        double[] nodes = new double[3 * (pieces + 1)];
        for (int i = 0; i <= pieces; i++) {
            nodes[3 * i] = length * i / pieces;
        }
        boolean[] held = new boolean[2 * nodes.length];
        Arrays.fill(held, 0, 6, true);
        double[] loads = new double[held.length];
        loads[6 * pieces + 1] = 1;
        Equilibrium bent = new FrameSolver(BeamFrame.chain(nodes, wire), held)
                .linear(new double[held.length], loads)
                .orElseThrow();
        near(bent.moved(pieces, 1), Math.pow(length, 3) / (3 * wire.eiZ()));
        near(bent.moved(pieces, 5), length * length / (2 * wire.eiZ()));
        return "a clamped wire bends as the handbook's formula has it";
    }

    private static void near(double found, double formula) {
        if (!(Math.abs(found - formula) < 1e-9 * formula)) {
            throw new IllegalStateException("a clamped wire bends by " + found + ", by the formula it is " + formula);
        }
    }

    private static Status outcome(Checked checked) {
        return checked.report().findings().all().stream()
                .filter(f -> f.id().equals(WATCHED))
                .map(Finding::outcome)
                .findFirst()
                .orElse(Status.DOES_NOT_APPLY);
    }

    private Checked checked(Case c) {
        return new Checker(rules.load())
                .check(c, "", new CheckOptions(Optional.empty(), Optional.empty(), true, Doubting.NONE));
    }

    private static Case example() throws Exception {
        return CaseTree.parse(BlankCase.minimal(), CaseFormat.YAML)
                .read("example")
                .value()
                .orElseThrow();
    }

    private static String writing() throws Exception {
        Path file = Files.createTempFile("fairlead", ".json");
        try {
            Files.writeString(file, CaseWriter.json(example()));
            CaseReading again = CaseReader.read(file);
            if (!again.value().equals(Optional.of(example()))) {
                throw new IllegalStateException("a case that was written is read back differently");
            }
            return "a case that was written is read back the same";
        } finally {
            Files.delete(file);
        }
    }

    /** Letters of a page are embedded; those within a drawing become outlines, by Java's own fonts. */
    private String pdf() throws Exception {
        byte[] page = ReportPdf.onePage(List.of(checked(example())), List.of());
        Set<String> faces = PdfWriter.embedded(page);
        if (faces.size() != PdfWriter.FACES) {
            throw new IllegalStateException("of " + PdfWriter.FACES + " faces these are embedded: " + faces);
        }
        byte[] drawing = ScaleCard.pdf(Paper.A4);
        return "a page of " + page.length / 1000 + " kB with " + String.join(" and ", faces) + ", a drawing of "
                + drawing.length / 1000 + " kB";
    }

    private static String cache() throws IOException {
        RuleCache.Holds holds = RuleCache.ofUser().holds();
        return holds.folder() + " can be written to, holds " + holds.packages()
                + (holds.packages() == 1 ? " package" : " packages") + " of rules, " + holds.bytes() / 1000 + " kB"
                + (holds.damaged() == 0 ? "" : ", " + holds.damaged() + " of them damaged and to be compiled anew");
    }

    private static String writable(Path folder) throws IOException {
        Path probe = Files.createTempFile(folder, ".fairlead", ".probe");
        Files.delete(probe);
        return folder + " can be written to";
    }
}
