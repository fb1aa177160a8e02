package dev.fairlead.cli;

import dev.fairlead.check.Version;
import dev.fairlead.rules.Rulebase;
import dev.fairlead.rules.RulebaseException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The command line of Fairlead. */
@Command(name = "fairlead", mixinStandardHelpOptions = true, versionProvider = Main.Versions.class, sortOptions = false,
        description = "Checks a plan that advances crowded lower incisors with a utility arch, from first records to holding.",
        footer = {"", "Exit codes: 0 nothing at or above --fail-on; 1 an error of the program;", "2 wrong usage; 3 a case that cannot be read; 4 findings at or above --fail-on.", "",
                "It supports the judgement of a licensed clinician and does not replace it;", "local rules come first."})
public final class Main {
    private static final Set<String> JUDGING = Set.of("check", "work");
    private static final Set<String> HELP = Set.of("--help", "-h", "--version", "-V");

    private Main() {}

    /** Tells the version of the program. */
    static final class Versions implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"fairlead " + Version.ofProgram()};
        }
    }

    /** A message for the person who called, with the exit code that goes with it. */
    static final class Stop extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final int code;

        Stop(int code, String message) {
            super(message);
            this.code = code;
        }
    }

    public static void main(String[] args) {
        if (args.length > 1 && JUDGING.contains(args[0]) && Stream.of(args).noneMatch(a -> a.startsWith("--rules") || HELP.contains(a))) {
            // while the rulebase loads here, the command line, the case and its measurements are worked on; who needs it waits for it
            Background.start(() -> Rulebase.builtIn().prepared());
        }
        Console console = Console.ofProcess();
        System.exit(run(console, args));
    }

    /** Runs one command; returns the exit code. */
    static int run(Console console, String... args) {
        CommandLine line = commandLine(console, args.length == 0 ? "" : args[0]);
        int code = line.execute(args);
        try {
            console.flush();
        } catch (IOException e) {
            return ExitCode.OWN_ERROR;
        }
        return code;
    }

    /** All commands, in the order of the help. */
    private static final List<String> COMMANDS =
            List.of("check", "work", "whatif", "wire", "sheet", "criteria", "start", "serve", "audit", "compare", "cohort");

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
            case "serve" -> new ServeCommand(console);
            case "audit" -> new AuditCommand(console);
            case "compare" -> new CompareCommand(console);
            case "cohort" -> new CohortCommand(console);
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** The command line with the command that is called; with all where none is named, or one that is not known. */
    private static CommandLine commandLine(Console console, String called) {
        CommandLine line = new CommandLine(new Main());
        if (!called.equals("--version") && !called.equals("-V")) {
            for (String name : COMMANDS.contains(called) ? List.of(called) : COMMANDS) {
                line.addSubcommand(name, command(name, console));
            }
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
        line.setExecutionExceptionHandler((e, command, parsed) -> failed(console, e));
        return line;
    }

    private static int failed(Console console, Exception e) {
        if (e instanceof Stop stop) {
            if (!stop.getMessage().isEmpty()) {
                console.err().println(stop.getMessage());
            }
            return stop.code;
        }
        if (e instanceof RulebaseException rules) {
            console.err().println("The rulebase cannot be used:");
            rules.problems().forEach(p -> console.err().println("  " + p));
            return ExitCode.USAGE;
        }
        console.err().println("An error of the program, not of the case: " + e);
        e.printStackTrace(console.err());
        return ExitCode.OWN_ERROR;
    }
}
