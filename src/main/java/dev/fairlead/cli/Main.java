package dev.fairlead.cli;

import dev.fairlead.check.Version;
import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.io.IOException;
import java.util.Objects;

/** Where the program begins and ends: one command, one exit code. */
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

        @Override
        public String getMessage() {
            return Objects.requireNonNull(super.getMessage());
        }
    }

    public static void main(String[] args) {
        Console console = Console.ofProcess();
        try {
            System.exit(run(console, args));
        } catch (NoClassDefFoundError e) {
            console.err()
                    .println("A library of the program is missing (" + e.getMessage()
                            + "): the folder lib belongs beside fairlead.jar. Build or unpack both together.");
            console.err().flush();
            System.exit(ExitCode.OWN_ERROR);
        }
    }

    /** Runs one command; returns the exit code. */
    static int run(Console console, String... args) {
        int code = CommandTree.execute(console, args);
        try {
            console.flush();
        } catch (IOException e) {
            console.err().println("Not everything was written to standard output (" + WholeFile.why(e) + ").");
            console.err().flush();
            return ExitCode.OWN_ERROR;
        }
        return code;
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
            rules.problems().forEach(p -> console.err().println("  " + Visible.of(p)));
            return ExitCode.USAGE;
        }
        console.err().println("An error of the program, not of the case: " + e);
        e.printStackTrace(console.err());
        return ExitCode.OWN_ERROR;
    }
}
