package dev.fairlead.cli;

import dev.fairlead.check.Background;
import dev.fairlead.check.Version;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * Where the program begins. A {@link PlainCall} goes straight to work: to build the command line with its options takes
 * a good part of the time of a check.
 */
public final class Main {
    private Main() {}

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
        if (judges(args)) {
            // while the rulebase loads here, the command line, the case and its measurements are worked on; who needs
            // it waits for it
            Background.start("loading", Rulebase::builtIn);
        }
        Console console = Console.ofProcess();
        System.exit(run(console, args));
    }

    private static boolean judges(String[] args) {
        if (args.length < 2 || !args[0].equals("check") && !args[0].equals("work")) {
            return false;
        }
        for (String a : args) {
            if (a.startsWith("--rules")
                    || a.equals("--help")
                    || a.equals("-h")
                    || a.equals("--version")
                    || a.equals("-V")) {
                return false;
            }
        }
        return true;
    }

    /** Runs one command; returns the exit code. */
    static int run(Console console, String... args) {
        int code = command(console, args);
        try {
            console.flush();
        } catch (IOException e) {
            return ExitCode.OWN_ERROR;
        }
        return code;
    }

    private static int command(Console console, String[] args) {
        if (args.length == 1 && (args[0].equals("--version") || args[0].equals("-V"))) {
            console.out().println(version());
            return ExitCode.CLEAN;
        }
        Optional<Callable<Integer>> plain = PlainCall.of(console, args);
        if (plain.isEmpty()) {
            return CommandTree.execute(console, args);
        }
        try {
            return plain.get().call();
        } catch (Exception e) {
            return failed(console, e);
        }
    }

    static String version() {
        return "fairlead " + Version.ofProgram();
    }

    /** Tells what went wrong; returns the exit code. */
    static int failed(Console console, Exception e) {
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
