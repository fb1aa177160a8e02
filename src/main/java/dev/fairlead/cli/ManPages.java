package dev.fairlead.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;

/** Writes the manual pages that go into a package: {@code ManPages FOLDER}, one for each command. */
final class ManPages {
    private ManPages() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        CommandLine line = CommandTree.commandLine(new Console(nowhere, nowhere), "");
        Files.writeString(folder.resolve("fairlead.1"), page("fairlead", line));
        for (Map.Entry<String, CommandLine> sub : line.getSubcommands().entrySet()) {
            String name = "fairlead-" + sub.getKey();
            Files.writeString(folder.resolve(name + ".1"), page(name, sub.getValue()));
        }
    }

    /** A manual page (roff, man macros) of a command: what it does, and its help as it is printed. */
    static String page(String name, CommandLine command) {
        String about = String.join(" ", command.getCommandSpec().usageMessage().description());
        return ".TH " + name.toUpperCase(Locale.ROOT) + " 1 \"\" \"" + Main.version() + "\"\n.SH NAME\n" + escape(name)
                + " \\- " + escape(about) + "\n.SH USAGE\n.nf\n"
                + escape(command.getUsageMessage(CommandLine.Help.Ansi.OFF)) + ".fi\n";
    }

    /** Hyphens stay what is typed, and a dot or quote that begins a line is no request. */
    private static String escape(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-").replaceAll("(?m)^([.'])", "\\\\&$1");
    }
}
