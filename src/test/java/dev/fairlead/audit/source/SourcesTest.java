package dev.fairlead.audit.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourcesTest {
    @TempDir
    private Path folder;

    private static String json(String id) {
        return "{\"fairlead\": 1, \"id\": \"" + id + "\", \"stage\": \"records\"}";
    }

    @Test
    void foldersAreReadInTheOrderOfNamesAndWhatIsNoCaseIsPassedOver() throws IOException {
        Files.createDirectories(folder.resolve("b/c"));
        Files.writeString(folder.resolve("b/c/2.json"), json("two"));
        Files.writeString(folder.resolve("a.yaml"), "fairlead: 1\nid: one\nstage: records\n");
        Files.writeString(folder.resolve("z.ndjson"), json("three") + "\n\n" + json("four"));
        Files.writeString(folder.resolve("z.truth.ndjson"), "{}\n");
        Files.writeString(folder.resolve("notes.txt"), "nothing");
        assertThat(Collected.items(folder)).extracting(Collected::told).containsExactly("one", "two", "three", "four");
        assertThat(new Sources(List.of(folder), Mapping.NONE).passedOver()).hasSize(2);
        assertThat(Collected.items(folder).get(3).source()).endsWith("z.ndjson:3");
    }

    @Test
    void whatIsNotThereBecomesARow() throws IOException {
        assertThat(Collected.items(folder.resolve("gone.json")))
                .extracting(Collected::told)
                .containsExactly("there is no such file");
    }

    @Test
    void aLineThatIsTooLongDoesNotHideTheNext() throws IOException {
        Path file = folder.resolve("long.ndjson");
        try (OutputStream out = Files.newOutputStream(file)) {
            byte[] much = new byte[1 << 16];
            Arrays.fill(much, (byte) 'x');
            for (int i = 0; i < 40; i++) {
                out.write(much);
            }
            out.write(("\n" + json("next") + "\n").getBytes(StandardCharsets.UTF_8));
        }
        assertThat(Collected.items(file))
                .extracting(Collected::told)
                .satisfiesExactly(
                        t -> assertThat(t).contains("longer than"),
                        t -> assertThat(t).isEqualTo("next"));
    }

    @Test
    void archivesAreReadWithoutUnpackingAndTheirNamesLeadNowhere() throws IOException {
        Path zip = folder.resolve("x.zip");
        write(
                zip,
                "../../outside.json",
                json("a"),
                "in/b.ndjson",
                json("b") + "\n" + json("c"),
                "nested.zip",
                "x",
                "\u001b[2Jd.json",
                "{");
        List<Item> items = Collected.items(zip);
        assertThat(items)
                .extracting(Collected::told)
                .hasSize(5)
                .contains("a", "b", "c")
                .anyMatch(t -> t.contains("within an archive"));
        assertThat(items).allMatch(i -> i.source().chars().noneMatch(Character::isISOControl));
        assertThat(folder.getParent().resolve("outside.json")).doesNotExist();
        assertThat(folder.resolve("outside.json")).doesNotExist();
    }

    @Test
    void anArchiveThatIsCutShortIsTold() throws IOException {
        Path zip = folder.resolve("cut.zip");
        write(zip, "a.json", json("a"));
        byte[] all = Files.readAllBytes(zip);
        Files.write(zip, Arrays.copyOf(all, all.length / 2));
        assertThat(Collected.items(zip))
                .extracting(Collected::told)
                .singleElement()
                .asString()
                .contains("cut short");
    }

    @Test
    void aBombIsRefusedInTheMiddleAndTheNextFileIsRead() throws IOException {
        Path zip = folder.resolve("bomb.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            out.putNextEntry(new ZipEntry("bomb.ndjson"));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 64; i++) {
                out.write(zeros);
            }
            out.putNextEntry(new ZipEntry("good.json"));
            out.write(json("good").getBytes(StandardCharsets.UTF_8));
        }
        assertThat(Files.size(zip)).isLessThan(200_000);
        assertThat(Collected.items(zip))
                .extracting(Collected::told)
                .anyMatch(t -> t.contains("unpacks to more than"))
                .contains("good");
    }

    /** Each entry keeps to what one may unpack to; together they do not. */
    @Test
    void entriesTogetherHaveABudget() throws IOException {
        Path zip = folder.resolve("many.zip");
        byte[] blank = new byte[1 << 20];
        Arrays.fill(blank, (byte) '\n');
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (int i = 0; i < 8; i++) {
                out.putNextEntry(new ZipEntry(i + ".ndjson"));
                for (int k = 0; k < 15; k++) {
                    out.write(blank);
                }
            }
        }
        assertThat(Collected.items(zip)).extracting(Collected::told).anyMatch(t -> t.contains("unpacks to more than"));
    }

    static void write(Path zip, String... namesAndTexts) throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                out.putNextEntry(new ZipEntry(namesAndTexts[i]));
                out.write(namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
            }
        }
    }
}
