package dev.fairlead.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.web.store.CaseFolder;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A zip file that is brought in has one budget for all its entries. */
class FolderZipTest {
    @TempDir
    Path folder;

    @Test
    void manyEntriesThatEachKeepToTheirOwnBudgetAreRefusedTogether() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(packed)) {
            byte[] blanks = new byte[1_900_000];
            java.util.Arrays.fill(blanks, (byte) ' ');
            for (int i = 0; i < 60; i++) {
                zip.putNextEntry(new ZipEntry("case-" + i + ".yaml"));
                zip.write(blanks);
                zip.closeEntry();
            }
        }
        List<FolderZip.Taken> taken =
                FolderZip.into(CaseFolder.open(folder), new ByteArrayInputStream(packed.toByteArray()));
        assertThat(taken).hasSizeLessThan(60);
        assertThat(taken.get(taken.size() - 1).refused()).contains("200 times its size");
    }
}
