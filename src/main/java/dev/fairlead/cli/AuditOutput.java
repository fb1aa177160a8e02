package dev.fairlead.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.page.AuditPage;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.write.CsvSink;
import dev.fairlead.audit.write.LineSink;
import dev.fairlead.audit.write.ParquetSink;
import dev.fairlead.audit.write.RowSink;
import dev.fairlead.audit.write.SmallCells;
import dev.fairlead.audit.write.SummaryJson;
import dev.fairlead.audit.write.SummaryText;
import dev.fairlead.audit.write.Utf8Writer;
import dev.fairlead.audit.write.XlsxSink;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Where an audit is written: standard output, or a file that takes its name only when it is whole. */
final class AuditOutput implements AutoCloseable {
    private final AuditForm form;
    private final @Nullable Path file;
    private final Console console;
    /** Where rows are written until all are there: a later pass begins anew. */
    private @Nullable Path part;

    private @Nullable OutputStream out;
    private @Nullable RowSink sink;
    private boolean whole;
    private boolean recoded;

    AuditOutput(Console console, AuditForm form, Path file) {
        this.console = console;
        this.form = form;
        this.file = file;
    }

    /** What takes rows one by one, for forms that have them; what an earlier pass wrote is thrown away. */
    List<RowSink> sinks(Checker checker, Heading heading) throws IOException {
        if (sink != null) {
            sink.close();
        }
        if (out != null) {
            out.close();
        }
        if (part == null) {
            part = file == null ? Files.createTempFile("fairlead-audit", ".part") : WholeFile.draft(file);
            part.toFile().deleteOnExit();
        }
        OutputStream to = Files.newOutputStream(part);
        out = to;
        var catalogue = checker.rulebase().catalogue();
        sink = switch (form) {
            case ndjson -> new LineSink(catalogue, writer(to));
            case csv -> new CsvSink(catalogue, writer(to));
            case xlsx -> new XlsxSink(catalogue, to, heading.tool());
            case parquet -> new ParquetSink(catalogue, to, heading.tool());
            default -> null;
        };
        return sink == null ? List.of() : List.of(sink);
    }

    /**
     * Writes the summary, for forms that are one, and gives the file its name; {@code pages} is the link to the folder
     * of reports of single cases.
     */
    void summary(
            Checker checker, CheckOptions options, Heading heading, Summary summary, AuditExtras extras, String pages)
            throws IOException {
        OutputStream to = Objects.requireNonNull(out, "rows come first");
        switch (form) {
            case text -> to.write((SummaryText.of(heading, summary) + extras.text()).getBytes(StandardCharsets.UTF_8));
            case json -> {
                ObjectNode tree = SummaryJson.of(heading, summary);
                extras.json(tree);
                if (recoded) {
                    SmallCells.leaveOut(tree);
                }
                to.write(SummaryJson.text(tree).getBytes(StandardCharsets.UTF_8));
            }
            case html ->
                to.write(AuditPage.of(checker, options, heading, summary, extras.agreement(), extras.findings(), pages)
                        .getBytes(StandardCharsets.UTF_8));
            default -> {}
        }
        whole = true;
    }

    /** Says that what is written is to be shared: small counts are left out. */
    void recoded(boolean yes) {
        recoded = yes;
    }

    private static Writer writer(OutputStream out) {
        return new Utf8Writer(new BufferedOutputStream(out, 1 << 16));
    }

    @Override
    public void close() throws IOException {
        try {
            if (sink != null) {
                sink.close();
            }
            if (out != null) {
                out.close();
            }
            if (part != null && whole) {
                if (file == null) {
                    Files.copy(part, console.out());
                    console.out().flush();
                } else {
                    WholeFile.put(part, file);
                }
            }
        } finally {
            if (part != null) {
                Files.deleteIfExists(part);
            }
        }
    }
}
