package dev.fairlead.cli;

import dev.fairlead.audit.source.MappingProposal;
import dev.fairlead.audit.source.TableException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Proposes a mapping for the headings of a table. */
final class MappingProposals {
    private MappingProposals() {}

    static boolean toOutput(Path to) {
        return to.toString().equals("-");
    }

    /** Writes the proposal, and tells what was matched, what was not, and what is to be settled. */
    static int write(Console console, Path table, Path to, SourceOptions source) throws IOException {
        try {
            MappingProposal p = MappingProposal.of(table, source.tables());
            if (toOutput(to)) {
                console.out().print(p.json());
            } else {
                WholeFile.write(to, p.json().getBytes(StandardCharsets.UTF_8));
            }
            p.matched().forEach((heading, field) -> console.err().println("  " + heading + "  ->  " + field));
            if (!p.unmatched().isEmpty()) {
                console.err().println("No field found, so ignored: " + String.join(", ", p.unmatched()));
            }
            p.unsure().forEach(u -> console.err().println("To be settled: " + u));
            if (!toOutput(to)) {
                console.err().println("Wrote " + to + ": read it, correct it, then audit with --mapping " + to);
            }
            return ExitCode.CLEAN;
        } catch (TableException e) {
            throw new Main.Stop(ExitCode.USAGE, table + ": " + e.getMessage());
        }
    }
}
