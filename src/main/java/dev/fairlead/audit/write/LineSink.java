package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.run.RowJson;
import dev.fairlead.rules.catalogue.Catalogue;
import java.io.IOException;
import java.io.Writer;

/** One case a line, as JSON. */
public final class LineSink implements RowSink {
    private final RowJson json;
    private final Writer out;

    public LineSink(Catalogue catalogue, Writer out) {
        this.json = new RowJson(catalogue);
        this.out = out;
    }

    @Override
    public void row(CaseRow row) throws IOException {
        out.write(json.line(row));
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
