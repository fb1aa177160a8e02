package dev.fairlead.cli;

import java.nio.file.InvalidPathException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * The calls that are common and simple: {@code check CASE…} and {@code serve [--port N] [FOLDER]}. They go without the
 * command line.
 */
final class PlainCall {
    private PlainCall() {}

    /** What such a call asks for; empty for any other call, and for one that is wrong. */
    static Optional<Callable<Integer>> of(Console console, String[] args) {
        String command = args.length == 0 ? "" : args[0];
        return switch (command) {
            case "check" -> check(console, args);
            case "serve" -> serve(console, args);
            default -> Optional.empty();
        };
    }

    private static Optional<Callable<Integer>> check(Console console, String[] args) {
        List<String> cases = new ArrayList<>();
        for (int i = 1; i < args.length; i++) {
            if (!plain(args[i])) {
                return Optional.empty();
            }
            cases.add(args[i]);
        }
        return cases.isEmpty() ? Optional.empty() : Optional.of(CheckCommand.plain(console, cases));
    }

    private static Optional<Callable<Integer>> serve(Console console, String[] args) {
        String folder = "";
        String port = "";
        for (int i = 1; i < args.length; i++) {
            if (port.isEmpty() && args[i].equals("--port") && i + 1 < args.length && number(args[i + 1])) {
                port = args[++i];
            } else if (folder.isEmpty() && plain(args[i]) && !args[i].equals("-")) {
                folder = args[i];
            } else {
                return Optional.empty();
            }
        }
        try {
            return Optional.of(ServeCommand.plain(console, folder, port));
        } catch (InvalidPathException e) {
            // what is no name of a folder here is told by the command line
            return Optional.empty();
        }
    }

    /** Neither an option nor a file of arguments. */
    private static boolean plain(String arg) {
        boolean option = arg.startsWith("-") && !arg.equals("-");
        return !option && !arg.isEmpty() && !arg.startsWith("@");
    }

    /** A number of at most five digits, as one writes it. */
    private static boolean number(String arg) {
        for (int i = 0; i < arg.length(); i++) {
            if (arg.charAt(i) < '0' || arg.charAt(i) > '9') {
                return false;
            }
        }
        return arg.equals("0") || !arg.isEmpty() && arg.length() <= 5 && !arg.startsWith("0");
    }
}
