package dev.fairlead.cli;

import dev.fairlead.audit.source.TableTemplate;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.BlankCase;
import dev.fairlead.intake.write.CaseSchema;
import dev.fairlead.intake.write.FirstFacts;
import dev.fairlead.model.Stage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a case to begin with. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Write a blank case with every field explained, or a short filled one to see how it looks.")
final class StartCommand implements Callable<Integer> {
    private final Console console;

    @Option(
            names = "--minimal",
            description =
                    "A short filled case instead of the blank one; with --table, only the columns that it fills in.")
    private boolean minimal;

    @Option(
            names = "--consult",
            description = "Only the facts of a first consult, about twelve, instead of the blank case.")
    private boolean consult;

    @Option(
            names = "--stage",
            paramLabel = "STAGE",
            converter = StageWord.class,
            description = "Only what is filled in up to this stage, of a table too: ${COMPLETION-CANDIDATES}.",
            completionCandidates = StageWord.class)
    private Stage stage = Stage.HOLDING;

    @Option(
            names = "--table",
            description =
                    "A table of one case a row instead, with a column for every field: CSV, or by the name of the file a workbook (.xlsx)"
                            + " or a mapping file (.json) for a table of your own.")
    private boolean table;

    @Option(
            names = "--schema",
            description = "The JSON Schema of a case instead, by which editors check and explain while one types.")
    private boolean schema;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description =
                    "Write to this file, which must not exist yet; else to standard output. Beside a blank case its schema is"
                            + " written too, as the hidden file that its first line names.")
    private Path output;

    StartCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        if (table) {
            return table();
        }
        boolean blank = !minimal && !consult && !schema;
        String text = schema
                ? CaseSchema.text()
                : minimal ? BlankCase.minimal() : consult ? consult() : BlankCase.text(stage);
        if (output == null) {
            console.out().print(text);
            return ExitCode.CLEAN;
        }
        try {
            Files.writeString(output, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw new Main.Stop(ExitCode.USAGE, output + " exists already; name another file, or move it away first.");
        }
        boolean beside = blank && besideIt();
        console.err()
                .println("Wrote " + output
                        + (beside ? ", and beside it " + BlankCase.SCHEMA_FILE + " for editors" : "")
                        + (schema ? "." : ". Fill in what is known, then: check " + output));
        return ExitCode.CLEAN;
    }

    /** The schema where the first line of a blank case looks for it; one that lies there already is left as it is. */
    private boolean besideIt() throws IOException {
        Path beside = output.resolveSibling(BlankCase.SCHEMA_FILE);
        if (Files.exists(beside)) {
            return false;
        }
        Files.writeString(beside, CaseSchema.text(), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        return true;
    }

    private static String consult() {
        CaseTree tree = CaseTree.empty();
        tree.set("/id", "my-case-1");
        FirstFacts.GROUPS.values().forEach(group -> group.forEach(p -> tree.set(p, "unknown")));
        return """
                # A first consult for Fairlead: put what is known in the place of unknown. Lengths in mm, angles in degrees,
                # age in years. What is not here counts as unknown; the blank case of start explains every field.
                """ + tree.text(CaseFormat.YAML);
    }

    private Integer table() throws IOException {
        String name = output == null ? "" : output.toString();
        TableTemplate.Wanted wanted = new TableTemplate.Wanted(stage, minimal);
        if (output == null) {
            console.out().print(TableTemplate.csv(wanted));
            return ExitCode.CLEAN;
        }
        try (OutputStream out =
                Files.newOutputStream(output, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            if (name.endsWith(".xlsx")) {
                TableTemplate.xlsx(out, wanted);
            } else {
                out.write((name.endsWith(".json") ? TableTemplate.mapping() : TableTemplate.csv(wanted))
                        .getBytes(StandardCharsets.UTF_8));
            }
        } catch (FileAlreadyExistsException e) {
            throw new Main.Stop(ExitCode.USAGE, output + " exists already; name another file, or move it away first.");
        }
        console.err()
                .println("Wrote " + output
                        + (name.endsWith(".json")
                                ? ". Name your own columns in it, then: audit --mapping " + output + " TABLE"
                                : ". Fill in a row for each case (the first is an example), then: audit " + output));
        return ExitCode.CLEAN;
    }
}
