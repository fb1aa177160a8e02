package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.verdict.Ending;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A workbook: cases with their counts, findings that warn or wait, and each criterion with its rates. The library
 * writes one sheet at a time, so findings wait in a temporary file until the sheet of cases is done.
 */
public final class XlsxSink implements RowSink {
    /** Rows that a sheet can hold, less one for the heading. */
    static final int MOST_ROWS = 1_048_575;

    private static final int FLUSH = 500;
    private static final char BETWEEN = '\u001F';
    private static final List<String> CASE_HEAD = List.of(
            "source",
            "case",
            "stage",
            "resident",
            "day",
            "stop",
            "caution",
            "not assessed",
            "pass",
            "does not apply",
            "waived",
            "note");

    private final Workbook book;
    private final FindingRows rows;
    private final int most;
    private Worksheet cases;
    private int caseRow;
    private int caseSheets;
    private final Path waiting;
    private final Writer spool;

    public XlsxSink(Catalogue catalogue, OutputStream out, String tool) throws IOException {
        this(catalogue, out, tool, MOST_ROWS);
    }

    /** With another number of rows a sheet, for tests. */
    XlsxSink(Catalogue catalogue, OutputStream out, String tool, int most) throws IOException {
        this.book = new Workbook(
                out,
                "Fairlead",
                tool.matches("[0-9]{1,4}\\.[0-9]{1,4}.*") ? tool.replaceAll("^([0-9]+\\.[0-9]+).*", "$1") : null);
        this.rows = new FindingRows(catalogue);
        this.most = most;
        this.waiting = Files.createTempFile("fairlead-findings", ".tmp");
        this.spool = Files.newBufferedWriter(waiting, StandardCharsets.UTF_8);
    }

    @Override
    public void row(CaseRow row) throws IOException {
        if (cases == null || caseRow > most) {
            cases = next(cases, "cases", ++caseSheets, CASE_HEAD);
            caseRow = 1;
        }
        String[] texts = {
            row.source(),
            row.id(),
            row.judged() ? row.stage().word() : FindingRows.word(row.kind()),
            row.resident(),
            row.day()
        };
        for (int i = 0; i < texts.length; i++) {
            cases.value(caseRow, i, Cells.safe(texts[i]));
        }
        if (row.judged()) {
            Ending[] counted = {Ending.STOP, Ending.CAUTION, Ending.NOT_ASSESSED, Ending.PASS, Ending.DOES_NOT_APPLY};
            for (int i = 0; i < counted.length; i++) {
                cases.value(caseRow, texts.length + i, row.count(counted[i]));
            }
            cases.value(caseRow, texts.length + counted.length, row.waived().size());
        }
        cases.value(
                caseRow,
                CASE_HEAD.size() - 1,
                Cells.safe(row.judged() ? row.superseded() ? "earlier state of a case" : "" : row.reason()));
        if (++caseRow % FLUSH == 0) {
            cases.flush();
        }
        if (row.judged()) {
            rows.of(row, cells -> finding(cells));
        }
    }

    private void finding(String[] cells) {
        if (cells[8].equals("pass") || cells[8].equals("does-not-apply")) {
            return;
        }
        try {
            for (String cell : cells) {
                spool.append(Cells.safe(cell).replace(BETWEEN, ' ')).append(BETWEEN);
            }
            spool.append('\n');
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void findings() throws IOException {
        spool.close();
        Worksheet sheet = null;
        int r = 0;
        int sheets = 0;
        try (BufferedReader lines = Files.newBufferedReader(waiting, StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (sheet == null || r > most) {
                    sheet = next(sheet, "findings", ++sheets, FindingRows.COLUMNS);
                    r = 1;
                }
                String[] cells = line.split(String.valueOf(BETWEEN), -1);
                for (int i = 0; i < FindingRows.COLUMNS.size(); i++) {
                    sheet.value(r, i, cells[i]);
                }
                if (++r % FLUSH == 0) {
                    sheet.flush();
                }
            }
        }
        if (sheet != null) {
            sheet.finish();
        }
    }

    private Worksheet next(Worksheet full, String name, int number, List<String> head) throws IOException {
        if (full != null) {
            full.finish();
        }
        Worksheet sheet = book.newWorksheet(number == 1 ? name : name + " " + number);
        for (int i = 0; i < head.size(); i++) {
            sheet.value(0, i, head.get(i));
            sheet.style(0, i).bold().set();
            sheet.width(i, i == 0 ? 40 : 16);
        }
        sheet.freezePane(0, 1);
        sheet.setAutoFilter(0, 0, head.size() - 1);
        return sheet;
    }

    @Override
    public void end(Heading heading, Summary s) throws IOException {
        if (cases != null) {
            cases.finish();
        }
        findings();
        Worksheet sheet = next(
                null,
                "criteria",
                1,
                List.of(
                        "criterion",
                        "stage",
                        "warn",
                        "of these stop",
                        "waived",
                        "pass",
                        "rate of warnings",
                        "low (95 %)",
                        "high (95 %)",
                        "not assessed",
                        "does not apply",
                        "asks"));
        int r = 1;
        for (CriterionCount c : s.criteria()) {
            Object[] cells = {
                c.id(),
                c.stage().word(),
                c.warn(),
                c.stop(),
                c.waived(),
                c.pass(),
                c.judged() == 0 ? null : c.warnRate().share(),
                c.judged() == 0 ? null : c.warnRate().low(),
                c.judged() == 0 ? null : c.warnRate().high(),
                c.notAssessed(),
                c.doesNotApply(),
                c.title()
            };
            for (int i = 0; i < cells.length; i++) {
                if (cells[i] instanceof String text) {
                    sheet.value(r, i, Cells.safe(text));
                } else if (cells[i] != null) {
                    sheet.value(r, i, (Number) cells[i]);
                }
                if (i >= 6 && i <= 8) {
                    sheet.style(r, i).format("0.0%").set();
                }
            }
            r++;
        }
        sheet.value(
                r + 1,
                0,
                "Fairlead " + heading.tool() + ", rulebase "
                        + heading.rulebase().version() + " "
                        + heading.rulebase().hash());
        sheet.value(r + 2, 0, dev.fairlead.findings.Report.CAUTION);
        sheet.finish();
    }

    @Override
    public void close() throws IOException {
        spool.close();
        Files.deleteIfExists(waiting);
        book.close();
    }
}
