package dev.fairlead.cli;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.write.ProblemSink;
import dev.fairlead.audit.write.RowSink;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The file that lists problems of an audit; it takes its name when every row has come, and not before. */
final class ProblemsFile implements RowSink {
    private final Path file;
    private @Nullable Path draft;
    private @Nullable ProblemSink sink;

    ProblemsFile(Path file) {
        this.file = file;
    }

    /** The same with no row in it: a later pass begins anew. */
    ProblemsFile empty() throws IOException {
        close();
        draft = WholeFile.draft(file);
        sink = new ProblemSink(Files.newBufferedWriter(draft, StandardCharsets.UTF_8));
        return this;
    }

    @Override
    public void row(CaseRow row) throws IOException {
        Objects.requireNonNull(sink).row(row);
    }

    @Override
    public void end(Heading heading, Summary summary) throws IOException {
        Objects.requireNonNull(sink).close();
        WholeFile.put(Objects.requireNonNull(draft), file);
    }

    @Override
    public void close() throws IOException {
        if (sink != null && draft != null) {
            sink.close();
            Files.deleteIfExists(draft);
        }
    }
}
