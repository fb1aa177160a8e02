package dev.fairlead.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.compare.GroupComparison;
import dev.fairlead.audit.compare.RulesComparison;
import dev.fairlead.audit.compare.Sweep;
import dev.fairlead.audit.page.ComparePage;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.write.CompareText;
import dev.fairlead.audit.write.GroupsText;
import dev.fairlead.audit.write.SummaryJson;
import dev.fairlead.check.Checker;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what a change of rules would do. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        customSynopsis = {
            "fairlead compare [OPTIONS] RULES_A RULES_B PATH...",
            "   or  fairlead compare --threshold ID=VALUE [OPTIONS] PATH...",
            "   or  fairlead compare --sweep ID[=FROM:TO[:STEPS]] [OPTIONS] PATH...",
            "   or  fairlead compare --audits|--sites A,B|--periods A,B [OPTIONS] PATH..."
        },
        description =
                "Tell what other rules or thresholds would do to known cases before they are adopted, or how two audits, periods or sites differ.")
final class CompareCommand implements Callable<Integer> {
    /** The word for the rulebase that comes with the program. */
    private static final String BUILT_IN = "built-in";

    /** Forms of output. */
    enum Form {
        text,
        json,
        html
    }

    private final Console console;

    @Parameters(
            arity = "1..*",
            paramLabel = "PATH",
            description =
                    "Two rulebases (folders as for --rules, or the word built-in) and the cases; with --threshold or --sweep the cases alone.")
    private List<String> arguments;

    @Option(
            names = "--threshold",
            paramLabel = "ID=VALUE",
            description =
                    "Try another value of a threshold, in its unit, against what is in force; may be given again.")
    private Map<String, Double> thresholds = new LinkedHashMap<>();

    @Option(
            names = "--sweep",
            paramLabel = "ID[=FROM:TO[:STEPS]]",
            description =
                    "Move a threshold over its allowed range, or from one value to another, and give the curve of warnings; may be given again.")
    private List<String> sweeps = new ArrayList<>();

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private Form form;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Write to this file; else to standard output.")
    private Path output;

    @Mixin
    private GroupsOption groups;

    @Mixin
    private SourceOptions source;

    @Mixin
    private CheckingOptions checking;

    @Mixin
    private TargetOption target;

    @Mixin
    private RulesOption rules;

    CompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        if (groups.any()) {
            return groups();
        }
        boolean quick = !thresholds.isEmpty() || !sweeps.isEmpty();
        if (!quick && arguments.size() < 3) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "Two rulebases and at least one path of cases are needed, or --threshold or --sweep and a path.");
        }
        target.guard(output, arguments);
        Rulebase first = quick ? rules.load() : rulebase(arguments.get(0));
        if (quick && arguments.contains("built-in") && !Files.exists(Path.of("built-in"))) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "With --threshold or --sweep the thresholds in force are what is compared with: name the cases alone,"
                            + " without a rulebase such as built-in.\nOther rules are taken with --rules DIR.");
        }
        List<Path> paths = (quick ? arguments : arguments.subList(2, arguments.size()))
                .stream().map(Path::of).toList();
        Audit.Settings settings = source.settings(checking.options(), Optional.empty());
        List<Sweep> moving = new ArrayList<>();
        for (String s : sweeps) {
            moving.add(sweep(first, s));
        }
        Optional<RulesComparison.Result> compared = Optional.empty();
        String a = quick ? "the thresholds in force" : arguments.get(0);
        String b = "";
        long unread = 0;
        if (!quick || !thresholds.isEmpty()) {
            Rulebase second = quick ? first.withThresholds(thresholds) : rulebase(arguments.get(1));
            b = quick ? words(first) : arguments.get(1);
            Sources sources = source.sources(paths);
            try (RunProgress bar = source.progress(console, "Comparing", sources.size())) {
                compared = Optional.of(new RulesComparison(first, second).run(sources, settings, bar));
            }
            unread = compared.get().unread();
        }
        List<Sweep.Result> curves = new ArrayList<>();
        for (Sweep s : moving) {
            Sources sources = source.sources(paths);
            try (RunProgress bar = source.progress(console, "Sweeping", sources.size())) {
                curves.add(s.run(sources, settings, bar));
            }
            unread += curves.get(curves.size() - 1).unread();
        }
        write(a, b, compared, curves);
        return unread > 0 ? ExitCode.UNREADABLE : ExitCode.CLEAN;
    }

    private int groups() throws IOException {
        if (!thresholds.isEmpty() || !sweeps.isEmpty()) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "--audits, --sites and --periods are not for --threshold and --sweep: one at a time.");
        }
        target.guard(output, arguments);
        GroupComparison.Result r = groups.run(
                new Checker(rules.load()),
                arguments.stream().map(Path::of).toList(),
                source,
                source.settings(checking.options(), Optional.empty()),
                console);
        write(
                switch (form) {
                    case text -> GroupsText.of(r);
                    case json -> SummaryJson.text(GroupsText.json(r));
                    case html -> ComparePage.of(r);
                });
        return r.notJudged() > 0 ? ExitCode.UNREADABLE : ExitCode.CLEAN;
    }

    private void write(String a, String b, Optional<RulesComparison.Result> compared, List<Sweep.Result> curves)
            throws IOException {
        String text = switch (form) {
            case text ->
                compared.map(r -> CompareText.of(a, b, r)).orElse("")
                        + String.join("\n", curves.stream().map(CompareText::of).toList());
            case html ->
                ComparePage.of(
                        compared.isPresent() ? a : "Warnings over the range of a threshold", b, compared, curves);
            case json -> {
                ObjectNode root = compared.map(r -> CompareText.json(a, b, r))
                        .orElseGet(() -> new com.fasterxml.jackson.databind.ObjectMapper()
                                .createObjectNode()
                                .put("format", SummaryJson.FORMAT));
                curves.forEach(c -> root.withArray("sweeps").add(CompareText.json(c)));
                yield SummaryJson.text(root);
            }
        };
        write(text);
    }

    private void write(String text) {
        if (output == null) {
            console.out().print(text);
        } else {
            WholeFile.write(output, text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static Rulebase rulebase(String name) {
        return name.equals(BUILT_IN) ? Rulebase.builtIn() : Rulebase.load(Path.of(name));
    }

    private String words(Rulebase first) {
        return String.join(
                ", ",
                thresholds.entrySet().stream()
                        .map(e -> e.getKey() + " = " + CompareText.number(e.getValue()) + " "
                                + threshold(first, e.getKey()).unit().symbol() + " instead of "
                                + CompareText.number(
                                        threshold(first, e.getKey()).value()))
                        .toList());
    }

    private static Threshold threshold(Rulebase rules, String name) {
        Threshold t = rules.catalogue().thresholds().get(name);
        if (t == null) {
            throw new RulebaseException(
                    List.of("no threshold is called " + name + "; `criteria ID` names those of a criterion"));
        }
        return t;
    }

    private static Sweep sweep(Rulebase rules, String asked) {
        String name = asked.contains("=") ? asked.substring(0, asked.indexOf('=')) : asked;
        Threshold t = threshold(rules, name);
        double from = t.low();
        double to = t.high();
        int steps = Sweep.STEPS;
        if (asked.contains("=")) {
            String[] parts = asked.substring(asked.indexOf('=') + 1).split(":", -1);
            try {
                from = Double.parseDouble(parts[0]);
                to = Double.parseDouble(parts[1]);
                steps = parts.length > 2 ? Integer.parseInt(parts[2]) : steps;
            } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
                throw new Main.Stop(ExitCode.USAGE, "--sweep " + asked + ": a range is FROM:TO or FROM:TO:STEPS");
            }
        }
        if (!(from < to) || steps < 2 || steps > Sweep.MOST_STEPS) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "--sweep " + asked + ": FROM lies below TO, and there are 2 to " + Sweep.MOST_STEPS + " steps");
        }
        return new Sweep(rules, name, from, to, steps);
    }
}
