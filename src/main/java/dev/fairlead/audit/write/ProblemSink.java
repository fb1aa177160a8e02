package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import java.io.IOException;
import java.io.Writer;

/** Every case that was not judged and every cell that was lost, one problem a row (RFC 4180). */
public final class ProblemSink implements RowSink {
    private final Writer out;

    public ProblemSink(Writer out) throws IOException {
        this.out = out;
        out.write("source,kind,problem\r\n");
    }

    @Override
    public void row(CaseRow row) throws IOException {
        if (!row.judged()) {
            put(row, FindingRows.word(row.kind()), row.reason());
        }
        for (String lost : row.lost()) {
            put(row, "lost-cell", lost);
        }
        for (String error : row.errors()) {
            put(row, "error", error);
        }
    }

    private void put(CaseRow row, String kind, String problem) throws IOException {
        out.write(CsvSink.quoted(Cells.safe(row.source())) + "," + kind + "," + CsvSink.quoted(Cells.safe(problem))
                + "\r\n");
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
