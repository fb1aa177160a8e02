package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.rules.Catalogue;
import java.io.IOException;
import java.io.Writer;

/** One finding a row, divided by commas (RFC 4180), with a first row of names. */
public final class CsvSink implements RowSink {
    private final FindingRows rows;
    private final Writer out;
    private final StringBuilder line = new StringBuilder(16_384);

    public CsvSink(Catalogue catalogue, Writer out) throws IOException {
        this.rows = new FindingRows(catalogue);
        this.out = out;
        out.write(String.join(",", FindingRows.COLUMNS) + "\r\n");
    }

    @Override
    public void row(CaseRow row) throws IOException {
        line.setLength(0);
        rows.of(row, cells -> {
            for (int i = 0; i < cells.length; i++) {
                line.append(i == 0 ? "" : ",").append(quoted(Cells.safe(cells[i])));
            }
            line.append("\r\n");
        });
        out.append(line);
    }

    private static String quoted(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == ',' || c == '"' || c == ';' || c == '\t') {
                return '"' + cell.replace("\"", "\"\"") + '"';
            }
        }
        return cell;
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
