package dev.fairlead.cli;

import dev.fairlead.audit.page.FeedbackSheet;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.report.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

/** Writes one page of feedback for each resident. */
final class FeedbackSheets {
    private FeedbackSheets() {}

    /** Writes {@code CODE.pdf} into the folder for everybody who has a code; returns how many. */
    static int write(Path folder, Heading heading, Summary summary, Consumer<Path> guard) throws IOException {
        for (Comparisons.Line l : summary.comparisons().lines()) {
            guard.accept(file(folder, l));
        }
        Files.createDirectories(folder);
        for (Comparisons.Line l : summary.comparisons().lines()) {
            WholeFile.write(file(folder, l), PdfWriter.pdf(FeedbackSheet.of(heading, summary, l)));
        }
        return summary.comparisons().lines().size();
    }

    private static Path file(Path folder, Comparisons.Line l) {
        return folder.resolve(l.group().name() + ".pdf");
    }
}
