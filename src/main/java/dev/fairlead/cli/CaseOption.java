package dev.fairlead.cli;

import dev.fairlead.model.Case;
import picocli.CommandLine.Parameters;

/** The one case that a command is about. */
final class CaseOption {
    @Parameters(arity = "1", paramLabel = "CASE", description = "A case file, JSON or YAML; - for standard input.")
    private String name;

    String name() {
        return name;
    }

    /** The case as it was read; where it cannot be read, its problems are told and the command ends. */
    Named read(Console console) {
        Named named = Named.read(name);
        if (!named.reading().read()) {
            named.refuse(console);
            throw new Main.Stop(ExitCode.UNREADABLE, "");
        }
        return named;
    }

    /** The case alone. */
    Case readCase(Console console) {
        return read(console).reading().value().get();
    }
}
