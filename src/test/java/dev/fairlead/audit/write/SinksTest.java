package dev.fairlead.audit.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Tally;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.apache.parquet.format.ColumnMetaData;
import org.apache.parquet.format.FileMetaData;
import org.apache.parquet.format.PageHeader;
import org.apache.parquet.format.RowGroup;
import org.apache.parquet.format.Util;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SinksTest {
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());
    private static final Catalogue CATALOGUE = CHECKER.rulebase().catalogue();
    private static final Heading HEADING =
            new Heading("0.1.0", RulebaseUsed.of(CHECKER.rulebase()), "", "", true, List.of("cases"), List.of());
    private static final List<CaseRow> ROWS = new ArrayList<>();
    private static final List<List<String>> LONG = new ArrayList<>();
    private static Summary summary;

    @BeforeAll
    static void audit() throws IOException {
        Tally tally = new Tally(new Checker(Rulebase.builtIn()), 5);
        new Audit(CHECKER, Audit.Settings.USUAL.withNumbers())
                .run(
                        new Sources(
                                List.of(
                                        Path.of("cases/heron-07-clean.yaml"),
                                        Path.of("cases/lapwing-16-waived.yaml"),
                                        Path.of("cases/knot-08-half-missing.yaml"),
                                        Path.of("cases/gull-13-full-of-slips.yaml")),
                                Mapping.NONE),
                        () -> d -> {
                            ROWS.add(d.row());
                            tally.add(d);
                        },
                        n -> {});
        ROWS.add(
                CaseRow.not(CaseRow.Kind.UNREADABLE, "=cmd|' /C calc'!A0.json", "", "+1+1, \"quoted\"\r\nsecond line"));
        FindingRows rows = new FindingRows(CATALOGUE);
        ROWS.forEach(r -> rows.of(r, cells -> LONG.add(List.of(cells))));
        summary = tally.summary();
    }

    private static void write(RowSink sink) throws IOException {
        try (sink) {
            for (CaseRow r : ROWS) {
                sink.row(r);
            }
            sink.end(HEADING, summary);
        }
    }

    @Test
    void noCellOfATableBeginsAFormula() throws IOException {
        StringWriter out = new StringWriter();
        write(new CsvSink(CATALOGUE, out));
        assertThat(out.toString())
                .contains("'=cmd|' /C calc'!A0.json")
                .contains("\"'+1+1, \"\"quoted\"\" second line\"");
        assertThat(out.toString().lines().count()).isEqualTo(LONG.size() + 1);
        for (String start : List.of("=1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\uFF1D1")) {
            assertThat(Cells.safe(start)).startsWith("'");
        }
        assertThat(Cells.safe("c-12")).isEqualTo("c-12");
        assertThat(Cells.safe("")).isEmpty();
    }

    @Test
    void theWorkbookHoldsCasesFindingsAndCriteriaAndGoesOnInFurtherSheets() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        write(new XlsxSink(CATALOGUE, out, "0.1.0", 3));
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            List<String> sheets = book.getSheets().map(Sheet::getName).toList();
            assertThat(sheets).startsWith("cases", "cases 2", "findings").contains("findings 2", "criteria");
            List<Row> second = book.findSheet("cases 2").orElseThrow().read();
            assertThat(second.get(2).getCellText(0)).isEqualTo("'=cmd|' /C calc'!A0.json");
            assertThat(second.stream().flatMap(Row::stream).filter(c -> c != null && c.getFormula() != null))
                    .isEmpty();
            Row first = book.findSheet("cases").orElseThrow().read().get(1);
            assertThat(first.getCellText(1)).isEqualTo("heron-07");
            assertThat(first.getCellAsNumber(6).orElseThrow().intValue())
                    .isEqualTo(ROWS.get(0).count(dev.fairlead.rules.catalogue.Ending.STOP));
            assertThat(book.findSheet("criteria").orElseThrow().read())
                    .hasSizeGreaterThan(CATALOGUE.criteria().size());
        }
    }

    @Test
    void findingsCarryTheirNumbers() {
        List<List<String>> numbers =
                LONG.stream().filter(r -> !r.get(column("value")).isEmpty()).toList();
        assertThat(numbers).hasSizeGreaterThan(20);
        for (List<String> r : numbers) {
            double value = Double.parseDouble(r.get(column("value")));
            double limit = Double.parseDouble(r.get(column("limit")));
            double margin = Double.parseDouble(r.get(column("margin")));
            double error = Double.parseDouble(r.get(column("error")));
            assertThat(Math.abs(value - limit)).as("%s", r).isCloseTo(Math.abs(margin), within(2e-6));
            if (r.get(column("outcome")).equals("warn") && Math.abs(margin) > 1e-6) {
                assertThat(margin).as("%s", r).isNegative();
                assertThat(r.get(column("reason"))).as("%s", r).isNotEmpty();
            }
            assertThat(r.get(column("closeness")).isEmpty()).as("%s", r).isEqualTo(error == 0);
        }
    }

    private static int column(String name) {
        return FindingRows.COLUMNS.indexOf(name);
    }

    /** A workbook made later of the same audit is the same, byte for byte; so is Parquet. */
    @Test
    void theSameAuditGivesTheSameBytes() throws Exception {
        ByteArrayOutputStream first = new ByteArrayOutputStream();
        ByteArrayOutputStream firstParquet = new ByteArrayOutputStream();
        write(new XlsxSink(CATALOGUE, first, "0.1.0"));
        write(new ParquetSink(CATALOGUE, firstParquet, "0.1.0", 100));
        // times in archives go by two seconds
        Thread.sleep(2_100);
        ByteArrayOutputStream second = new ByteArrayOutputStream();
        write(new XlsxSink(CATALOGUE, second, "0.1.0"));
        assertThat(second.toByteArray()).isEqualTo(first.toByteArray());
        ByteArrayOutputStream secondParquet = new ByteArrayOutputStream();
        write(new ParquetSink(CATALOGUE, secondParquet, "0.1.0", 100));
        assertThat(secondParquet.toByteArray()).isEqualTo(firstParquet.toByteArray());
    }

    /**
     * Read back by the format's own library for headers and footer, and by a decoder written from the format's text for
     * the values.
     */
    @Test
    void parquetHoldsEveryCellInOrder() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        write(new ParquetSink(CATALOGUE, out, "0.1.0", 100));
        byte[] file = out.toByteArray();
        assertThat(new String(file, 0, 4, StandardCharsets.US_ASCII)).isEqualTo("PAR1");
        assertThat(new String(file, file.length - 4, 4, StandardCharsets.US_ASCII))
                .isEqualTo("PAR1");
        int footer = ByteBuffer.wrap(file, file.length - 8, 4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .getInt();
        FileMetaData meta = Util.readFileMetaData(new ByteArrayInputStream(file, file.length - 8 - footer, footer));
        assertThat(meta.getNum_rows()).isEqualTo(LONG.size());
        assertThat(meta.getRow_groupsSize()).isEqualTo((LONG.size() + 99) / 100);
        for (int column = 0; column < FindingRows.COLUMNS.size(); column++) {
            List<String> read = new ArrayList<>();
            for (RowGroup g : meta.getRow_groups()) {
                read.addAll(values(
                        file,
                        FindingRows.TYPED.get(column).type(),
                        g.getColumns().get(column).getMeta_data()));
            }
            int c = column;
            assertThat(read)
                    .as(FindingRows.COLUMNS.get(column))
                    .isEqualTo(LONG.stream().map(r -> r.get(c)).toList());
        }
    }

    /** Values of a column as texts; nothing as an empty one. */
    private static List<String> values(byte[] file, FindingRows.Type type, ColumnMetaData meta) throws IOException {
        boolean answers = type == FindingRows.Type.ANSWER;
        long from = answers ? meta.getData_page_offset() : meta.getDictionary_page_offset();
        ByteArrayInputStream in = new ByteArrayInputStream(file, (int) from, (int) meta.getTotal_compressed_size());
        List<String> dictionary = new ArrayList<>();
        if (!answers) {
            ByteBuffer plain = ByteBuffer.wrap(page(in)).order(ByteOrder.LITTLE_ENDIAN);
            while (plain.hasRemaining()) {
                dictionary.add(
                        switch (type) {
                            case DAY -> LocalDate.ofEpochDay(plain.getInt()).toString();
                            case NUMBER -> FindingRows.number(plain.getDouble());
                            default -> {
                                byte[] text = new byte[plain.getInt()];
                                plain.get(text);
                                yield new String(text, StandardCharsets.UTF_8);
                            }
                        });
            }
        }
        byte[] data = page(in);
        int rows = (int) meta.getNum_values();
        int[] present = new int[rows];
        Arrays.fill(present, 1);
        int at = 0;
        if (type != FindingRows.Type.TEXT) {
            int length =
                    ByteBuffer.wrap(data, 0, 4).order(ByteOrder.LITTLE_ENDIAN).getInt();
            present = HybridEncoderTest.decode(Arrays.copyOfRange(data, 4, 4 + length), 1, rows);
            at = 4 + length;
        }
        int n = Arrays.stream(present).sum();
        int[] indices = answers || n == 0
                ? new int[0]
                : HybridEncoderTest.decode(Arrays.copyOfRange(data, at + 1, data.length), data[at], n);
        List<String> all = new ArrayList<>();
        int next = 0;
        for (int p : present) {
            if (p == 0) {
                all.add("");
            } else if (answers) {
                all.add((data[at + next / 8] >> next % 8 & 1) == 1 ? "yes" : "no");
                next++;
            } else {
                all.add(dictionary.get(indices[next++]));
            }
        }
        return all;
    }

    private static byte[] page(ByteArrayInputStream in) throws IOException {
        PageHeader header = Util.readPageHeader(in);
        byte[] body = new GZIPInputStream(new ByteArrayInputStream(in.readNBytes(header.getCompressed_page_size())))
                .readAllBytes();
        assertThat(body).hasSize(header.getUncompressed_page_size());
        return body;
    }

    @Test
    void theSummaryFitsEightyColumnsAndCountsWhatWasFound() {
        String text = SummaryText.of(HEADING, summary);
        assertThat(text.lines()
                        .mapToInt(l -> l.codePointCount(0, l.length()))
                        .max()
                        .orElse(0))
                .isLessThanOrEqualTo(80);
        assertThat(text)
                .contains("3 cases judged, 1 unreadable")
                .contains("NOT READ")
                .contains("WAIVERS")
                .contains("WHAT IS MISSING, AND WITH WHOM")
                .contains("supports the judgement");
        assertThat(SummaryJson.of(HEADING, summary).path("judged").asInt()).isEqualTo(3);
        assertThat(SummaryJson.of(HEADING, summary)
                        .path("unreadable")
                        .path("count")
                        .asInt())
                .isEqualTo(1);
    }
}
