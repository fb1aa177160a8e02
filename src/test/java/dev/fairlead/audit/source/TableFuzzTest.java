package dev.fairlead.audit.source;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.testing.Damage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged tables, workbooks, archives and mappings: every row is a case or a trouble that is told, and no reader ends
 * the audit.
 */
class TableFuzzTest {
    private static final String TABLE = """
            id,stage,date,child.age,teeth.42.width,bite.overjet,films.panoramicRead,Angle
            a-1,records,2026-03-02,11.4 y,5.8,3.5 mm,yes,13°
            a-2,indication,2026-03-03,10 y,5.4,"4,5",no,12°
            a-3,records,2026-03-04,9.8 y,n/a,2,unknown,
            """;
    private static final String MAPPING = """
            {"columns": {"Angle": "films.secondMolarAngleLeft"}, "constants": {"resident": "r07"}, "words": {"stage": {"Rec": "records"}},
             "ignore": ["Notes"], "dates": ["d.M.yyyy"], "missing": ["n/a", "-"], "yes": ["j"], "no": ["n"]}
            """;

    @TempDir
    Path folder;

    private final Damage damage = new Damage(29);
    private int rows;
    private int troubles;
    private int mapped;

    @Test
    void everyRowIsACaseOrATroubleThatIsTold() throws IOException {
        byte[] workbook = workbook();
        byte[] archive = archive();
        Mapping good = mapping(MAPPING);
        int all = Damage.Kind.TABLE.inputs();
        for (int i = 0; i < all; i++) {
            int kind = i % 8;
            byte[] bytes = kind == 0
                    ? damage.of(workbook)
                    : kind == 1
                            ? damage.of(archive)
                            : kind == 2
                                    ? damage.of(TABLE.getBytes(StandardCharsets.UTF_8))
                                    : damage.of(TABLE).getBytes(StandardCharsets.UTF_8);
            Path file = folder.resolve(kind == 0 ? "t.xlsx" : kind == 1 ? "t.zip" : "t.csv");
            Files.write(file, bytes);
            Mapping mapping = kind == 7 ? spoiltMapping(good) : good;
            try {
                new Sources(List.of(file), new TableOptions(mapping, "", 0, i % 2 == 0)).each(this::look);
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("input " + i + ":\n" + new String(bytes, StandardCharsets.UTF_8), e);
            }
        }
        System.out.printf(
                "Fuzz: of %d tables %d rows read, %d troubles told, %d damaged mappings taken%n",
                all, rows, troubles, mapped);
        assertThat(rows).isGreaterThan(all / 4);
        assertThat(troubles).isPositive();
    }

    private void look(Item item) {
        assertThat(Visible.odd(item.source())).isEmpty();
        try {
            item.read(true)
                    .reading()
                    .problems()
                    .forEach(p -> assertThat(Visible.odd(p.toString())).isEmpty());
            rows++;
        } catch (TableException e) {
            troubles++;
            assertThat(e.getMessage()).isNotBlank().doesNotContain("Exception", "com.fasterxml", "org.dhatim");
            assertThat(Visible.odd(e.getMessage())).isEmpty();
        }
    }

    private Mapping mapping(String text) throws IOException {
        try {
            return Mapping.read(Files.writeString(folder.resolve("m.json"), text));
        } catch (TableException e) {
            throw new AssertionError(e);
        }
    }

    private Mapping spoiltMapping(Mapping good) throws IOException {
        Path file = Files.write(folder.resolve("m.json"), damage.of(MAPPING).getBytes(StandardCharsets.UTF_8));
        try {
            Mapping read = Mapping.read(file);
            mapped++;
            return read;
        } catch (TableException e) {
            assertThat(e.getMessage()).contains("m.json").doesNotContain("Exception");
            return good;
        }
    }

    private byte[] workbook() throws IOException {
        Path file = folder.resolve("good.xlsx");
        try (Workbook book = new Workbook(Files.newOutputStream(file), "t", "1.0")) {
            Worksheet sheet = book.newWorksheet("cases");
            String[] lines = TABLE.split("\n");
            for (int r = 0; r < lines.length; r++) {
                String[] cells = lines[r].split(",(?! ?5\")", -1);
                for (int c = 0; c < cells.length; c++) {
                    sheet.value(r, c, cells[c]);
                }
            }
        }
        return Files.readAllBytes(file);
    }

    private byte[] archive() throws IOException {
        Path file = folder.resolve("good.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry("t.csv"));
            zip.write(TABLE.getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("../up.json"));
            zip.write("{\"fairlead\": 1, \"id\": \"a\", \"stage\": \"records\"}".getBytes(StandardCharsets.UTF_8));
        }
        return Files.readAllBytes(file);
    }
}
