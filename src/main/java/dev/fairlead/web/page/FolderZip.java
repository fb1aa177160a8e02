package dev.fairlead.web.page;

import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.Keepsakes;
import dev.fairlead.web.store.StoreException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** All that a folder keeps in one zip file, and back; nothing that is there is overwritten. */
public final class FolderZip {
    private static final int MOST_ENTRIES = 200_000;
    /** A log of many years is larger than any case. */
    private static final int MOST_BYTES = 10 * CaseFolder.MOST_BYTES;

    /**
     * Cases pack to about a seventh, many alike to a fortieth; a small zip that holds far more was made to fill a disk.
     */
    private static final int MOST_RATIO = 200;

    private static final long ALWAYS_ALLOWED = 64L << 20;

    private FolderZip() {}

    /** Counts what is read of the packed file. */
    private static final class Counted extends FilterInputStream {
        private long bytes;

        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int b = super.read();
            bytes += b < 0 ? 0 : 1;
            return b;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int n = super.read(into, from, length);
            bytes += Math.max(0, n);
            return n;
        }

        long budget() {
            return Math.max(ALWAYS_ALLOWED, MOST_RATIO * bytes);
        }
    }

    /**
     * What became of one entry.
     *
     * @param refused why it was not brought in; empty when it was
     */
    public record Taken(String name, String refused) {}

    /** Writes all that the folder keeps: cases, those put away, earlier versions and logs. */
    static void write(CaseFolder folder, OutputStream out) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            for (String name : folder.names()) {
                Optional<byte[]> file = folder.bytes(name);
                if (file.isPresent()) {
                    put(zip, name, file.get());
                }
            }
            Keepsakes kept = folder.keepsakes();
            for (String path : kept.all()) {
                put(zip, path, kept.read(path));
            }
        }
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }

    /**
     * Brings in every case that is not there yet, with its earlier versions and its log; says of each case what became
     * of it.
     */
    static List<Taken> into(CaseFolder folder, InputStream in) {
        List<Taken> all = new ArrayList<>();
        Set<String> brought = new HashSet<>();
        int entries = 0;
        long unpacked = 0;
        Counted packed = new Counted(in);
        try (ZipInputStream zip = new ZipInputStream(packed, StandardCharsets.UTF_8)) {
            for (ZipEntry e; (e = zip.getNextEntry()) != null && entries < MOST_ENTRIES; entries++) {
                if (e.isDirectory()) {
                    continue;
                }
                // of an entry no more is unpacked than a file here can have: a small zip may hold gigabytes
                byte[] bytes = zip.readNBytes(MOST_BYTES + 1);
                unpacked += bytes.length;
                if (unpacked > packed.budget()) {
                    all.add(
                            new Taken(
                                    e.getName(),
                                    "the file unpacks to more than " + MOST_RATIO
                                            + " times its size, as one made to fill a disk does; nothing from here on was read"));
                    break;
                }
                Optional<String> owner = folder.keepsakes().name(e.getName());
                if (owner.isEmpty()) {
                    all.add(take(folder, e.getName(), bytes));
                    brought.addAll(all.get(all.size() - 1).refused().isEmpty() ? Set.of(e.getName()) : Set.of());
                } else if (folder.keepsakes().putAway(e.getName())) {
                    all.add(away(folder, e.getName(), bytes));
                    brought.addAll(all.get(all.size() - 1).refused().isEmpty() ? Set.of(owner.get()) : Set.of());
                } else if (brought.contains(owner.get()) && bytes.length <= MOST_BYTES) {
                    // versions go with a case that came in; those of one that was there already are its own
                    folder.keepsakes().putBack(e.getName(), bytes);
                }
                if (bytes.length > MOST_BYTES) {
                    break;
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

    private static Taken away(CaseFolder folder, String path, byte[] bytes) throws IOException {
        String refused = unread(path, bytes);
        if (refused.isEmpty() && !folder.keepsakes().putBack(path, bytes)) {
            refused = "there is such a case already";
        }
        return new Taken(path, refused);
    }

    /** Why bytes are no case; empty when they are one. */
    private static String unread(String name, byte[] text) {
        if (text.length > CaseFolder.MOST_BYTES) {
            return "larger than any case; nothing behind it was read";
        }
        Opened read = Opened.of(name.replaceAll(".*/", ""), text);
        return read.reading().read()
                ? ""
                : read.reading().errors().stream()
                        .findFirst()
                        .map(p -> "not a case: expected " + p.expected() + ", found " + p.found())
                        .orElse("not a case");
    }

    private static Taken take(CaseFolder folder, String name, byte[] text) {
        String refused = unread(name, text);
        if (!refused.isEmpty()) {
            return new Taken(name, refused);
        }
        try {
            folder.create(name, new String(text, StandardCharsets.UTF_8));
            return new Taken(name, "");
        } catch (StoreException e) {
            return new Taken(name, e.getMessage());
        }
    }
}
