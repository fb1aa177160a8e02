package dev.fairlead.web.page;

import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.StoreException;
import dev.fairlead.web.store.Stored;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** All cases of a folder in one zip file, and back; nothing that is there is overwritten. */
public final class FolderZip {
    private static final int MOST_ENTRIES = 2000;

    private FolderZip() {}

    /**
     * What became of one entry.
     *
     * @param refused why it was not brought in; empty when it was
     */
    public record Taken(String name, String refused) {}

    static byte[] of(CaseFolder folder) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (String name : folder.names()) {
                Stored file = folder.read(name).orElse(null);
                if (file != null) {
                    zip.putNextEntry(new ZipEntry(name));
                    zip.write(file.text().getBytes(StandardCharsets.UTF_8));
                    zip.closeEntry();
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return bytes.toByteArray();
    }

    /** Brings in every entry that is a case and not there yet; says of each what became of it. */
    static List<Taken> into(CaseFolder folder, byte[] bytes) {
        List<Taken> all = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
            for (ZipEntry e; (e = zip.getNextEntry()) != null && all.size() < MOST_ENTRIES; ) {
                if (!e.isDirectory()) {
                    // of an entry no more is unpacked than a case can have: a small file may hold gigabytes
                    byte[] text = zip.readNBytes(CaseFolder.MOST_BYTES + 1);
                    all.add(take(folder, e.getName(), text));
                    if (text.length > CaseFolder.MOST_BYTES) {
                        break;
                    }
                }
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new PageError(
                    422,
                    "This file is not a zip file that can be read",
                    "What was read before the fault is in the folder. Make the file again, or bring its cases in one by one.");
        }
        if (all.isEmpty()) {
            throw new PageError(422, "There is no case in this file", "Choose a zip file that was exported here.");
        }
        return all;
    }

    private static Taken take(CaseFolder folder, String name, byte[] text) {
        if (text.length > CaseFolder.MOST_BYTES) {
            return new Taken(name, "larger than any case; nothing behind it was read");
        }
        Opened read = Opened.of(name, text);
        if (!read.reading().read()) {
            return new Taken(
                    name,
                    read.reading().errors().stream()
                            .findFirst()
                            .map(p -> "not a case: expected " + p.expected() + ", found " + p.found())
                            .orElse("not a case"));
        }
        try {
            folder.create(name, new String(text, StandardCharsets.UTF_8));
            return new Taken(name, "");
        } catch (StoreException e) {
            return new Taken(name, e.getMessage());
        }
    }
}
