package dev.fairlead.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The command line with all commands and options. */
@Command(
        name = "fairlead",
        mixinStandardHelpOptions = true,
        versionProvider = CommandTree.Versions.class,
        sortOptions = false,
        description =
                "Checks a plan that advances crowded lower incisors with a utility arch, from first records to holding.",
        footer = {
            "",
            "Exit codes: 0 nothing at or above --fail-on; 1 an error of the program;",
            "2 wrong usage; 3 a case that cannot be read; 4 findings at or above --fail-on.",
            "",
            "It supports the judgement of a licensed clinician and does not replace it;",
            "local rules come first."
        })
final class CommandTree {
    /** Tells the version of the program. */
    static final class Versions implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {Main.version()};
        }
    }

    private CommandTree() {}

    /** Runs one command; returns the exit code. */
    static int execute(Console console, String... args) {
        // answered at once: to read the options of a command line takes longer than this needs
        if (List.of(args).equals(List.of("--version"))) {
            console.out().println(Main.version());
            return ExitCode.CLEAN;
        }
        return commandLine(console, args.length == 0 ? "" : args[0]).execute(args);
    }

    /** All commands, in the order of the help. */
    private static final List<String> COMMANDS = List.of(
            "check",
            "work",
            "whatif",
            "wire",
            "sheet",
            "criteria",
            "start",
            "measure",
            "serve",
            "audit",
            "compare",
            "cohort",
            "calibrate",
            "rules",
            "self-check",
            "completion");

    /** Each command is made only when it is needed, for that takes longer than most of them run. */
    private static Object command(String name, Console console) {
        return switch (name) {
            case "check" -> new CheckCommand(console);
            case "work" -> new WorkCommand(console);
            case "whatif" -> new WhatIfCommand(console);
            case "wire" -> new WireCommand(console);
            case "sheet" -> new SheetCommand(console);
            case "criteria" -> new CriteriaCommand(console);
            case "start" -> new StartCommand(console);
            case "measure" -> new MeasureCommand(console);
            case "serve" -> new ServeCommand(console);
            case "audit" -> new AuditCommand(console);
            case "compare" -> new CompareCommand(console);
            case "cohort" -> new CohortCommand(console);
            case "calibrate" -> new CalibrateCommand(console);
            case "rules" -> new RulesCommand(console);
            case "self-check" -> new SelfCheckCommand(console);
            case "completion" -> new CompletionCommand(console);
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** The command line with the command that is called; with all where none is named, or one that is not known. */
    static CommandLine commandLine(Console console, String called) {
        // or the parser looks for Groovy, through every library that there is
        System.setProperty("picocli.disable.closures", "true");
        CommandLine line = new CommandLine(new CommandTree());
        for (String name : COMMANDS.contains(called) ? List.of(called) : COMMANDS) {
            line.addSubcommand(name, command(name, console));
        }
        for (CommandLine sub : line.getSubcommands().values()) {
            sub.getCommandSpec().versionProvider(new Versions());
        }
        line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(80);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        UsageErrors.on(line);
        line.setExecutionExceptionHandler((e, command, parsed) -> Main.failed(console, e));
        return line;
    }
}
