package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

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
            "site",
            "day",
            "stop",
            "caution",
            "not assessed",
            "pass",
            "does not apply",
            "waived",
            "note");

    private final OutputStream out;
    /** The workbook as the library writes it: with the moment of writing in it. */
    private final Path dated;

    private final Workbook book;
    private final FindingRows rows;
    private final int most;
    private @Nullable Worksheet cases;
    private int caseRow;
    private int caseSheets;
    private final Path waiting;
    private final Writer spool;

    public XlsxSink(Catalogue catalogue, OutputStream out, String tool) throws IOException {
        this(catalogue, out, tool, MOST_ROWS);
    }

    /** With another number of rows a sheet, for tests. */
    XlsxSink(Catalogue catalogue, OutputStream out, String tool, int most) throws IOException {
        this.out = out;
        this.dated = Files.createTempFile("fairlead-workbook", ".tmp");
        this.book = new Workbook(
                Files.newOutputStream(dated),
                "Fairlead",
                tool.matches("[0-9]{1,4}\\.[0-9]{1,4}.*") ? tool.replaceAll("^([0-9]+\\.[0-9]+).*", "$1") : null);
        this.rows = new FindingRows(catalogue);
        this.most = most;
        this.waiting = Files.createTempFile("fairlead-findings", ".tmp");
        // a run that is told to stop leaves nothing of any case behind
        dated.toFile().deleteOnExit();
        waiting.toFile().deleteOnExit();
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
            row.judged() ? row.reached().word() : FindingRows.word(row.kind()),
            row.resident(),
            row.details().site(),
            row.day()
        };
        for (int i = 0; i < texts.length; i++) {
            typed(
                    cases,
                    caseRow,
                    i,
                    CASE_HEAD.get(i).equals("day") ? FindingRows.Type.DAY : FindingRows.Type.TEXT,
                    texts[i]);
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
                spool.append(cell.replace(BETWEEN, ' ').replaceAll("[\\r\\n]+", " "))
                        .append(BETWEEN);
            }
            spool.append('\n');
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void findings() throws IOException {
        spool.close();
        @Nullable Worksheet sheet = null;
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
                    typed(sheet, r, i, FindingRows.TYPED.get(i).type(), cells[i]);
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

    private static void typed(Worksheet sheet, int r, int i, FindingRows.Type type, String cell) {
        if (type == FindingRows.Type.TEXT) {
            sheet.value(r, i, Cells.safe(cell));
        } else if (!cell.isEmpty()) {
            switch (type) {
                case NUMBER -> sheet.value(r, i, Double.valueOf(cell));
                case DAY -> {
                    sheet.value(r, i, LocalDate.parse(cell));
                    sheet.style(r, i).format("yyyy-mm-dd").set();
                }
                default -> sheet.value(r, i, cell.equals("yes"));
            }
        }
    }

    private Worksheet next(@Nullable Worksheet full, String name, int number, List<String> head) throws IOException {
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
            cells(
                    sheet,
                    r++,
                    c.id(),
                    c.stage().word(),
                    c.warn(),
                    c.stop(),
                    c.waived(),
                    c.pass(),
                    share(c.judged() == 0 ? Double.NaN : c.warnRate().share()),
                    share(c.judged() == 0 ? Double.NaN : c.warnRate().low()),
                    share(c.judged() == 0 ? Double.NaN : c.warnRate().high()),
                    c.notAssessed(),
                    c.doesNotApply(),
                    c.title());
        }
        sheet.value(
                r + 1,
                0,
                "Fairlead " + heading.tool() + ", rulebase "
                        + heading.rulebase().version() + " "
                        + heading.rulebase().hash());
        sheet.value(r + 2, 0, dev.fairlead.findings.Report.CAUTION);
        sheet.finish();
        new SummarySheets(s).each(this::table);
    }

    /** A share, told in per cent; NaN for none. */
    record Share(double value) {}

    static Share share(double value) {
        return new Share(value);
    }

    private void table(String name, List<String> head, List<Object[]> all) {
        try {
            Worksheet sheet = next(null, name, 1, head);
            int r = 1;
            for (Object[] row : all) {
                cells(sheet, r++, row);
            }
            sheet.finish();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Texts, numbers and shares of a row; nothing where a number is NaN. */
    private static void cells(Worksheet sheet, int r, Object... cells) {
        for (int i = 0; i < cells.length; i++) {
            if (cells[i] instanceof String text) {
                sheet.value(r, i, Cells.safe(text));
            } else if (cells[i] instanceof Share s) {
                if (!Double.isNaN(s.value())) {
                    sheet.value(r, i, s.value());
                    sheet.style(r, i).format("0.0%").set();
                }
            } else if (cells[i] instanceof Number n && !Double.isNaN(n.doubleValue())) {
                sheet.value(r, i, n);
            }
        }
    }

    @Override
    public void close() throws IOException {
        spool.close();
        Files.deleteIfExists(waiting);
        try {
            book.close();
            undated();
        } finally {
            Files.deleteIfExists(dated);
        }
    }

    /** Copies the workbook without the moment of writing, so that the same audit gives the same bytes. */
    private void undated() throws IOException {
        try (ZipFile from = new ZipFile(dated.toFile());
                ZipOutputStream to = new ZipOutputStream(out)) {
            for (ZipEntry e : (Iterable<ZipEntry>) from.stream().<ZipEntry>map(x -> x)::iterator) {
                ZipEntry same = new ZipEntry(e.getName());
                same.setTimeLocal(LocalDate.of(1980, 1, 1).atStartOfDay());
                to.putNextEntry(same);
                try (InputStream part = from.getInputStream(e)) {
                    if (e.getName().equals("docProps/core.xml")) {
                        String core = new String(part.readAllBytes(), StandardCharsets.UTF_8);
                        to.write(core.replaceAll("<dcterms:(created|modified)[^>]*>[^<]*</dcterms:\\1>", "")
                                .getBytes(StandardCharsets.UTF_8));
                    } else {
                        part.transferTo(to);
                    }
                }
                to.closeEntry();
            }
        }
    }
}
