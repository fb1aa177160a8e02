package dev.fairlead.audit.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.BlankCase;
import dev.fairlead.model.Case;
import dev.fairlead.model.Side;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableTest {
    private static final TableTemplate.Wanted WHOLE = new TableTemplate.Wanted(dev.fairlead.model.Stage.HOLDING, false);

    @TempDir
    private Path folder;

    private Path csv(String text) throws IOException {
        return Files.writeString(folder.resolve("t.csv"), text);
    }

    private static Case only(List<Item> items) throws TableException {
        assertThat(items).hasSize(1);
        return items.get(0).read(false).reading().value().orElseThrow();
    }

    @Test
    void theTemplatesExampleIsTheExampleCaseInBothForms() throws IOException, TableException {
        Case expected = CaseReader.read(BlankCase.minimal().getBytes(StandardCharsets.UTF_8), "x", CaseFormat.YAML)
                .value()
                .orElseThrow();
        assertThat(only(Collected.items(csv(TableTemplate.csv(WHOLE))))).isEqualTo(expected);
        Path book = folder.resolve("t.xlsx");
        try (OutputStream out = Files.newOutputStream(book)) {
            TableTemplate.xlsx(out, WHOLE);
        }
        assertThat(only(Collected.items(book))).isEqualTo(expected);
    }

    @Test
    void aMappingNamesColumnsTranslatesWordsAndAddsConstants() throws IOException, TableException {
        Path file = Files.writeString(folder.resolve("m.json"), """
                {"columns": {"Code": "id", "Where": "stage", "OJ": "bite.overjet", "V1 left": "visits.1.left.standOff"},
                 "constants": {"plan.intervalWeeks": "5"}, "words": {"Where": {"2": "indication"}}, "ignore": ["Remarks"]}""");
        Case c = only(
                Collected.items(Mapping.read(file), csv("Code;Where;OJ;Remarks;V1 left\nm-1;2;3,5;anything;1,8\n")));
        assertThat(c.stage().get().word()).isEqualTo("indication");
        assertThat(c.bite().overjet().value()).isEqualTo(3.5);
        assertThat(c.visits().get(0).side(Side.LEFT).standOff().value()).isEqualTo(1.8);
        assertThat(c.plan().intervalWeeks().value()).isEqualTo(5);
        assertThat(Mapping.read(Files.writeString(folder.resolve("n.json"), TableTemplate.mapping()))
                        .columns())
                .containsEntry("Code", "id");
        assertThatThrownBy(() -> Mapping.read(
                        Files.writeString(folder.resolve("o.json"), "{\"columns\": {\"x\": \"bite.overjett\"}}")))
                .isInstanceOf(TableException.class)
                .hasMessageContaining("likely bite.overjet is meant");
    }

    @Test
    void badRowsAreToldAndTheOthersRead() throws IOException {
        List<Item> items = Collected.items(
                csv(
                        "id,stage,bite.overjet,visits.2.date\na,records,3.5,\nc,nonsense,,\nd,records,,2026-01-02\n,records,1,\nf,records,,\n"));
        assertThat(items)
                .extracting(Collected::told)
                .satisfiesExactly(
                        t -> assertThat(t).isEqualTo("a"),
                        t -> assertThat(t).isEqualTo("c"),
                        t -> assertThat(t).contains("entry before it is empty"),
                        t -> assertThat(t).contains("/id"),
                        t -> assertThat(t).isEqualTo("f"));
        assertThat(items.get(4).source()).endsWith("t.csv:6");
        assertThat(Collected.items(csv("id,stage\na,records,more,and more\n")))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("4 cells under 2 headings");
    }

    /** Visits in any order of columns, a title above, separators alone, a decimal comma with noise of a spreadsheet. */
    @Test
    void tablesComeInAsPeopleKeepThem() throws IOException, TableException {
        List<Item> items = Collected.items(
                csv(
                        "Clinic of the north;;;;;\n;;;;;\nvisits.2.date;visits.1.date;id;stage;bite.overjet;visits.1.left.standOff\n"
                                + "2026-05-01;2026-04-01;a;activation;3,4000000000000004;1,8\n;;;;;\n;2026-04-01;b;activation;;\n"));
        assertThat(items).hasSize(2);
        Case a = items.get(0).read(false).reading().value().orElseThrow();
        assertThat(a.bite().overjet().value()).isEqualTo(3.4);
        assertThat(a.visits()).hasSize(2);
        assertThat(a.visits().get(1).date().get()).isEqualTo(LocalDate.of(2026, 5, 1));
        assertThat(items.get(1).source()).endsWith(":6");
    }

    @Test
    void aCellThatCannotBeReadLosesItsFactAndNotTheCase() throws IOException, TableException {
        String text = "id,stage,bite.overjet,date\na,records,=1+1,2026-01-02\nb,records,3,when\nc,records\n";
        List<Item> items = Collected.items(csv(text));
        assertThat(items).extracting(Collected::told).containsExactly("a", "b", "c");
        assertThat(items.get(0).read(true).lost()).singleElement().asString().contains("bite.overjet");
        assertThat(items.get(0)
                        .read(true)
                        .reading()
                        .value()
                        .orElseThrow()
                        .date()
                        .get())
                .isEqualTo(LocalDate.of(2026, 1, 2));
        assertThat(items.get(1).read(true).lost()).singleElement().asString().contains("date");
        assertThat(items.get(2).read(true).lost()).singleElement().asString().contains("2 cells under 4 headings");
        List<Item> strict = new java.util.ArrayList<>();
        new Sources(List.of(folder.resolve("t.csv")), new TableOptions(Mapping.NONE, "", 0, true)).each(strict::add);
        assertThat(strict).extracting(Collected::told).noneMatch(t -> t.length() == 1);
    }

    @Test
    void aMappingKnowsDaysAndWordsForMissingYesAndNo() throws IOException, TableException {
        Path file = Files.writeString(
                folder.resolve("d.json"),
                "{\"dates\": [\"d.M.yyyy\"], \"missing\": [\"k.A.\"], \"yes\": [\"ja\"], \"no\": [\"nein\"]}");
        Case c = only(Collected.items(
                Mapping.read(file),
                csv("id,stage,date,mouth.untreatedCaries,mouth.activeGingivitis,bite.overjet\n"
                        + "a,records,2.3.2026,ja,Nein,K.A.\n")));
        assertThat(c.date().get()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(c.mouth().untreatedCaries().yes()).isTrue();
        assertThat(c.mouth().activeGingivitis().no()).isTrue();
        assertThat(c.bite().overjet().known()).isFalse();
        assertThatThrownBy(() -> Mapping.read(Files.writeString(folder.resolve("e.json"), "{\"dates\": [\"jjj\"]}")))
                .hasMessageContaining("no form of a day");
    }

    @Test
    void sheetsBelowACoverMergedCellsAndNamedSheets() throws IOException, TableException {
        Path book = folder.resolve("cover.xlsx");
        try (OutputStream out = Files.newOutputStream(book);
                Workbook w = new Workbook(out, "test", null)) {
            w.newWorksheet("cover").value(0, 0, "Cases of 2026");
            Worksheet s = w.newWorksheet("data");
            s.value(0, 0, "exported on Monday");
            List<String> head = List.of("id", "stage", "resident");
            for (int i = 0; i < head.size(); i++) {
                s.value(2, i, head.get(i));
            }
            for (int r = 0; r < 3; r++) {
                s.value(3 + r, 0, "m-" + r);
                s.value(3 + r, 1, "records");
            }
            s.value(3, 2, "r7");
            s.range(3, 2, 5, 2).merge();
        }
        List<Item> items = Collected.items(book);
        assertThat(items).hasSize(3);
        for (Item i : items) {
            assertThat(i.read(true).reading().value().orElseThrow().resident().get())
                    .isEqualTo("r7");
        }
        List<Item> none = new java.util.ArrayList<>();
        new Sources(List.of(book), new TableOptions(Mapping.NONE, "nowhere", 0, false)).each(none::add);
        assertThat(none).extracting(Collected::told).singleElement().asString().contains("no sheet is called");
    }

    @Test
    void aMappingIsProposedFromSomebodysOwnHeadings() throws IOException, TableException {
        Path table = csv(
                "Case code;Stage;Seen on date;Operator;Overjet (mm);V1 stand-off left;Favourite colour;untreated caries\n"
                        + "x-1;records;3.4.2026;r1;3,5;1,5;blue;j\n");
        MappingProposal p = MappingProposal.of(table, TableOptions.of(Mapping.NONE));
        assertThat(p.matched())
                .containsEntry("Case code", "id")
                .containsEntry("Operator", "resident")
                .containsEntry("Overjet (mm)", "bite.overjet")
                .containsEntry("V1 stand-off left", "visits.1.left.standOff")
                .containsEntry("untreated caries", "mouth.untreatedCaries");
        assertThat(p.unmatched()).contains("Favourite colour");
        Mapping read = Mapping.read(Files.writeString(folder.resolve("p.json"), p.json()));
        assertThat(read.dates()).containsExactly("d.M.yyyy");
        assertThat(read.yes()).containsExactly("j");
    }

    @Test
    void ownOutputsInAFolderArePassedOver() throws IOException {
        csv("id,stage\na,records\n");
        Files.writeString(folder.resolve("rows.csv"), "source,case,hash,stage\nx,a,,records\n");
        Files.writeString(folder.resolve("rows.ndjson"), "{\"source\":\"x\",\"hash\":\"1\"}\n");
        Files.writeString(folder.resolve("summary.json"), "{\n  \"format\" : 2,\n  \"tool\" : \"x\"}\n");
        Sources s = new Sources(List.of(folder), Mapping.NONE);
        List<Item> all = new java.util.ArrayList<>();
        s.each(all::add);
        assertThat(all).extracting(Collected::told).containsExactly("a");
        assertThat(s.passedOver()).hasSize(3);
    }

    @Test
    void aTableWhoseHeadingIsNotUnderstoodIsRefused() throws IOException {
        assertThat(Collected.items(csv("id,stage,bite.overjt\na,records,3\n")))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("likely bite.overjet is meant");
        assertThat(Collected.items(csv("stage\nrecords\n")))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("no column holds id");
        assertThat(Collected.items(csv("id,id,stage\na,b,records\n")))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("two columns");
        assertThat(Collected.items(csv("")))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("empty");
    }

    @Test
    void anOpenQuotationMarkEndsTheTableAndIsTold() throws IOException {
        List<Item> items = Collected.items(csv("id,stage\na,records\n\"b,records\n" + "c,records\n".repeat(3000)));
        assertThat(items)
                .extracting(Collected::told)
                .satisfiesExactly(
                        t -> assertThat(t).isEqualTo("a"), t -> assertThat(t).contains("open quotation mark"));
    }

    @Test
    void numbersDatesSharesAndAnswersOfAWorkbookBecomeWhatAPersonWouldType() throws IOException, TableException {
        Path book = folder.resolve("n.xlsx");
        try (OutputStream out = Files.newOutputStream(book);
                Workbook w = new Workbook(out, "test", null)) {
            Worksheet s = w.newWorksheet("cases");
            List<String> head =
                    List.of("id", "stage", "date", "bite.overjet", "mouth.plaqueScore", "mouth.untreatedCaries");
            for (int i = 0; i < head.size(); i++) {
                s.value(0, i, head.get(i));
            }
            s.value(1, 0, "x-1");
            s.value(1, 1, "records");
            s.value(1, 2, LocalDate.of(2026, 3, 9));
            s.style(1, 2).format("yyyy-mm-dd").set();
            s.value(1, 3, 0.1 + 5.3);
            s.value(1, 4, 0.14);
            s.style(1, 4).format("0%").set();
            s.value(1, 5, true);
        }
        Case c = only(Collected.items(book));
        assertThat(c.date().get()).isEqualTo(LocalDate.of(2026, 3, 9));
        assertThat(c.bite().overjet().value()).isEqualTo(5.4);
        assertThat(c.mouth().plaqueScore().value()).isEqualTo(14);
        assertThat(c.mouth().untreatedCaries().yes()).isTrue();
    }

    @Test
    void workbooksMadeToFillAMachineAreRefused() throws IOException {
        Path book = folder.resolve("bomb.xlsx");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(book))) {
            out.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 64; i++) {
                out.write(zeros);
            }
        }
        assertThat(Collected.items(book))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("unpacks to far more");
        SourcesTest.write(
                book, "xl/workbook.xml", "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"aaaa\">]><x>&a;</x>");
        assertThat(Collected.items(book))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("declares entities");
        SourcesTest.write(book, "nothing", "here");
        assertThat(Collected.items(book)).hasSize(1);
        Files.write(book, Arrays.copyOf(Files.readAllBytes(book), 40));
        assertThat(Collected.items(book))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("cut short");
    }
}
