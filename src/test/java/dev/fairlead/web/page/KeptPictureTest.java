package dev.fairlead.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.web.store.CaseFolder;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture that is kept lies beside its case and goes nowhere else. */
class KeptPictureTest {
    @TempDir
    Path folder;

    @Test
    void noListAndNoExportLooksAtIt() throws Exception {
        CaseFolder cases = CaseFolder.open(folder);
        cases.create("a-1.json", "{\"fairlead\":1,\"id\":\"a-1\"}");
        byte[] picture = {(byte) 0xFF, (byte) 0xD8};
        assertThat(cases.keepPicture("a-1.json", "2026-03-01-arch-picture", picture))
                .isEqualTo(
                        Path.of("a-1.pictures", "2026-03-01-arch-picture-1.jpg").toString());
        assertThat(cases.keepPicture("a-1.json", "2026-03-01-arch-picture", picture))
                .as("an earlier one stays")
                .endsWith("-2.jpg");
        assertThat(Files.readAllBytes(folder.resolve("a-1.pictures/2026-03-01-arch-picture-1.jpg")))
                .isEqualTo(picture);
        assertThat(cases.names()).containsExactly("a-1.json");
        List<String> exported = new ArrayList<>();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        FolderZip.write(cases, out);
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry e; (e = zip.getNextEntry()) != null; ) {
                exported.add(e.getName());
            }
        }
        assertThat(exported).containsExactly("a-1.json");
    }
}
