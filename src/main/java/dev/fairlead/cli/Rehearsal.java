package dev.fairlead.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Does once what the program is mostly started for, so that Java can note which classes that takes and keep them ready:
 * {@code Rehearsal FOLDER [CASE…]}. Without cases it makes one. What it writes goes into the folder; nothing is
 * printed.
 */
final class Rehearsal {
    private Rehearsal() {}

    public static void main(String[] args) {
        int code = ExitCode.CLEAN;
        try {
            rehearse(Path.of(args[0]), args);
        } catch (IOException | RuntimeException e) {
            System.err.println("No class archive could be made: " + e.getMessage());
            code = ExitCode.OWN_ERROR;
        }
        // the server's threads may outlive its closing
        System.exit(code);
    }

    private static void rehearse(Path folder, String... args) throws IOException {
        List<String> cases = new ArrayList<>(List.of(args).subList(1, args.length));
        if (cases.isEmpty()) {
            String made = folder.resolve("example.yaml").toString();
            run("start", "--minimal", "-o", made);
            cases.add(made);
        }
        Path served = Files.createDirectories(folder.resolve("served"));
        for (String name : cases) {
            run("check", name);
            Path file = Path.of(name);
            Files.copy(file, served.resolve(file.getFileName()));
        }
        run("--version");
        run("audit", "-o", folder.resolve("audit.txt").toString(), served.toString());
        run("serve", "--port", "0", "--once", served.toString());
    }

    private static void run(String... args) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        int code = Main.run(new Console(nowhere, nowhere), args);
        if (code == ExitCode.OWN_ERROR || code == ExitCode.USAGE) {
            throw new IllegalStateException(String.join(" ", args) + " ended with " + code);
        }
    }
}
