package dev.fairlead.cli;

import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.summary.Look;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.report.html.ReportHtml;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.Consumer;

/** Writes the full reports of the cases that an audit tells one by one. */
final class CasePages {
    private CasePages() {}

    /** Writes one page a case, named by its pseudonym, and returns the link from the audit's page to the folder. */
    static String write(
            Path folder, Path page, Summary summary, Checker checker, CheckOptions options, Consumer<Path> guard)
            throws IOException {
        summary.looks().forEach(l -> guard.accept(file(folder, l)));
        Files.createDirectories(folder);
        CheckOptions full =
                new CheckOptions(options.date(), options.stage(), true, Doubting.FIRST_ORDER, options.forces());
        for (Look l : summary.looks()) {
            try {
                CaseReading reading = l.item().read(false).reading();
                Checked checked =
                        checker.check(reading.value().orElseThrow(), l.row().hash(), reading.problems(), full);
                WholeFile.write(file(folder, l), ReportHtml.of(checked).getBytes(StandardCharsets.UTF_8));
            } catch (TableException e) {
                throw new IllegalStateException("it was read once", e);
            }
        }
        Path from = (page == null ? Path.of("page") : page).toAbsolutePath().getParent();
        return Objects.requireNonNull(from)
                .relativize(folder.toAbsolutePath())
                .toString()
                .replace('\\', '/');
    }

    private static Path file(Path folder, Look l) {
        return folder.resolve(l.row().id() + ".html");
    }
}
