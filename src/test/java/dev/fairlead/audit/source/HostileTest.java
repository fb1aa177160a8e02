package dev.fairlead.audit.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.model.Case;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files that are damaged, disguised or hand-made: each becomes a row with its reason, and what stands beside it is
 * read.
 */
class HostileTest {
    private static final String NAMESPACE = " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
    private static final String MAIN = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    @TempDir
    private Path folder;

    private List<String> told(Path... files) throws IOException {
        return Collected.items(files).stream().map(Collected::told).toList();
    }

    private static Case read(Item item) throws TableException {
        return item.read(item.text()).value().orElseThrow();
    }

    /**
     * Parts of a workbook as ECMA-376 asks for them, with or without styles, around these rows; row 1 is the heading.
     */
    private Path book(String name, boolean styles, boolean first1904, String rows) throws IOException {
        Path book = folder.resolve(name);
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(book))) {
            part(
                    out,
                    "[Content_Types].xml",
                    "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                            + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"" + MAIN
                            + "sheet.main+xml\"/><Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"" + MAIN
                            + "worksheet+xml\"/>"
                            + (styles
                                    ? "<Override PartName=\"/xl/styles.xml\" ContentType=\"" + MAIN + "styles+xml\"/>"
                                    : "")
                            + "</Types>");
            part(
                    out,
                    "_rels/.rels",
                    "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" "
                            + "Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            part(
                    out,
                    "xl/_rels/workbook.xml.rels",
                    "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" "
                            + "Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet1.xml\"/></Relationships>");
            part(
                    out,
                    "xl/workbook.xml",
                    "<workbook" + NAMESPACE
                            + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">"
                            + (first1904 ? "<workbookPr date1904=\"1\"/>" : "")
                            + "<sheets><sheet name=\"S\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>");
            if (styles) {
                part(
                        out,
                        "xl/styles.xml",
                        "<styleSheet" + NAMESPACE
                                + "><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/></cellXfs></styleSheet>");
            }
            part(
                    out,
                    "xl/worksheets/sheet1.xml",
                    "<worksheet" + NAMESPACE + "><sheetData><row r=\"1\">" + text("A1", "id") + text("B1", "stage")
                            + text("C1", "date") + text("D1", "bite.overjet") + "</row>" + rows
                            + "</sheetData></worksheet>");
        }
        return book;
    }

    private static void part(ZipOutputStream out, String name, String text) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(String at, String text) {
        return "<c r=\"" + at + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
    }

    private static String row(int number, String... cells) {
        return "<row r=\"" + number + "\">" + text("A" + number, "w-" + number) + text("B" + number, "records")
                + String.join("", cells) + "</row>";
    }

    @Test
    void formulasOfAWorkbookCountByTheirResultAndAreToldWithoutOne() throws IOException, TableException {
        Path book = book(
                "f.xlsx",
                true,
                false,
                row(2, "<c r=\"C2\" s=\"1\"><f>TODAY()</f><v>46090.6</v></c>", "<c r=\"D2\"><f>3+0.5</f><v>3.5</v></c>")
                        + row(3, "<c r=\"D3\"><f>3+0.5</f></c>")
                        + row(4, "<c r=\"D4\" t=\"e\"><v>#DIV/0!</v></c>")
                        + row(5, "<c r=\"D5\"><v>1E999999999</v></c>")
                        + row(6));
        List<Item> items = Collected.items(book);
        assertThat(told(book)).containsExactly("w-2", "w-3", "w-4", "w-5", "w-6");
        assertThat(items.get(1).read(true).lost().toString()).contains("D3 holds a formula without its result");
        assertThat(items.get(2).read(true).lost().toString()).contains("D4 holds an error");
        assertThat(items.get(3).read(true).lost().toString()).contains("cannot be read");
        // day 46090 counted from 30 December 1899 (ECMA-376 part 1, 18.17.4.1)
        assertThat(read(Collected.items(book).get(0)).date().get()).hasToString("2026-03-09");
    }

    @Test
    void aWorkbookThatCountsFrom1904IsReadSo() throws IOException, TableException {
        Path book = book("m.xlsx", true, true, row(2, "<c r=\"C2\" s=\"1\"><v>44628</v></c>"));
        assertThat(read(Collected.items(book).get(0)).date().get()).hasToString("2026-03-09");
    }

    @Test
    void aWorkbookWithoutStylesIsRead() throws IOException {
        assertThat(told(book("s.xlsx", false, false, row(2, "<c r=\"D2\"><v>3.5</v></c>"))))
                .containsExactly("w-2");
    }

    @Test
    void aWorkbookThatItsReaderTripsOverEndsNothingElse() throws IOException {
        Path bad = book("bad.xlsx", true, false, "<row r=\"2\"><c r=\"Z99999999999\"><v>1</v></c></row>");
        Path good = book("good.xlsx", true, false, row(2));
        assertThat(told(bad, good))
                .satisfiesExactly(
                        t -> assertThat(t).contains("damaged"),
                        t -> assertThat(t).isEqualTo("w-2"));
    }

    @Test
    void whoeverTakesTheCasesMayStopThem() throws IOException {
        Path good = book("good.xlsx", true, false, row(2));
        assertThatThrownBy(() -> new Sources(List.of(good), Mapping.NONE).each(i -> {
                    throw new IllegalStateException("stop");
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("stop");
    }

    @Test
    void aTableThatIsNotUtf8IsToldHowToBeSaved() throws IOException {
        Path t = Files.write(
                folder.resolve("t.csv"),
                "id,stage,resident\na,records,r\u00e91\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(told(t)).singleElement().asString().contains("CSV UTF-8");
        assertThat(told(Files.writeString(folder.resolve("u.csv"), "id,stage\n")))
                .singleElement()
                .asString()
                .contains("no rows");
        assertThat(told(Files.write(
                        folder.resolve("v.csv"),
                        "\ufeffid;stage;bite.overjet\r\na;records;3,5\r\n".getBytes(StandardCharsets.UTF_8))))
                .containsExactly("a");
    }

    @Test
    void aHeadingIsQuotedWithoutCharactersThatCannotBeSeen() throws IOException {
        assertThat(told(Files.writeString(folder.resolve("t.csv"), "id,stage,over\u2028jet\u202e\na,records,3\n")))
                .singleElement()
                .asString()
                .contains("over<U+2028>jet<U+202E>");
    }

    @Test
    void linesOfZerosPackedFilesAndEmptyArchivesAreNotPassedOver() throws IOException {
        String good = "{\"fairlead\":1,\"id\":\"ok\",\"stage\":\"records\"}";
        assertThat(told(Files.writeString(folder.resolve("z.ndjson"), "\0\0\0\0\r\n \t\r\n\r\n" + good + "\r\n")))
                .hasSize(2)
                .last()
                .isEqualTo("ok");
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(good.getBytes(StandardCharsets.UTF_8));
        }
        assertThat(told(Files.write(folder.resolve("g.ndjson"), packed.toByteArray())))
                .singleElement()
                .asString()
                .contains("gzip");
        assertThat(told(Files.write(folder.resolve("h.ndjson"), Arrays.copyOf(packed.toByteArray(), 30))))
                .singleElement()
                .asString()
                .contains("gzip");
        Path zip = folder.resolve("e.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            part(out, "readme.txt", "nothing");
        }
        assertThat(told(zip)).singleElement().asString().contains("no entry of the archive holds cases");
    }

    @Test
    void aLinkThatLeadsNowhereIsToldAmongWhatWasPassedOver() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("in"));
        Files.createSymbolicLink(inner.resolve("gone.json"), folder.resolve("nothing-here"));
        Files.createSymbolicLink(inner.resolve("self"), inner);
        Sources s = new Sources(List.of(inner), Mapping.NONE);
        assertThat(s.passedOver()).anyMatch(p -> p.endsWith("gone.json"));
    }
}
