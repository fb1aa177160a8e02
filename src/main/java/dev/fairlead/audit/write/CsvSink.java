package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import java.io.IOException;
import java.io.Writer;

/** One finding a row, divided by commas (RFC 4180), with a first row of names. */
public final class CsvSink implements RowSink {
    private final FindingRows rows;
    /** The cells of a criterion and its ending, written once. */
    private final String[][] endings;

    private final Writer out;
    private final StringBuilder line = new StringBuilder(16_384);

    public CsvSink(Catalogue catalogue, Writer out) throws IOException {
        this.rows = new FindingRows(catalogue);
        this.endings = new String[catalogue.criteria().size()][Ending.values().length];
        this.out = out;
        out.write(String.join(",", FindingRows.COLUMNS) + "\r\n");
    }

    @Override
    public void row(CaseRow row) throws IOException {
        line.setLength(0);
        if (!row.judged()) {
            line.append(cells(FindingRows.notJudged(row))).append("\r\n");
        } else {
            String first = cells(FindingRows.ofCase(row));
            for (int i = 0; i < row.endings().length; i++) {
                int e = row.endings()[i];
                if (e >= 0) {
                    if (endings[i][e] == null) {
                        endings[i][e] = cells(rows.ofEnding(i, Ending.values()[e]));
                    }
                    line.append(first)
                            .append(',')
                            .append(endings[i][e])
                            .append(',')
                            .append(cells(rows.last(row, i)))
                            .append("\r\n");
                }
            }
        }
        out.write(line.toString());
    }

    private static String cells(String[] cells) {
        StringBuilder joined = new StringBuilder(128);
        for (int i = 0; i < cells.length; i++) {
            joined.append(i == 0 ? "" : ",").append(quoted(Cells.safe(cells[i])));
        }
        return joined.toString();
    }

    static String quoted(String cell) {
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
