package dev.fairlead.audit.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** Unpacks a workbook once to nowhere and counts, before a library that holds parts of it in memory is let near it. */
final class XlsxGuard {
    private static final long MOST_BYTES = 1L << 30;
    /** Shared texts are held in memory as a whole. */
    private static final long MOST_SHARED = 64L << 20;

    private static final long MOST_RATIO = 200;
    private static final long ALWAYS_ALLOWED = 16L << 20;
    private static final int MOST_PARTS = 2000;
    private static final int MOST_TYPES = 1 << 20;

    private XlsxGuard() {}

    /** Throws with the reason when the workbook is not to be opened. */
    static void check(Path file) throws IOException, TableException {
        long total = 0;
        try (ZipFile zip = new ZipFile(file.toFile())) {
            if (zip.size() > MOST_PARTS) {
                throw new TableException("refused: a workbook of more than " + MOST_PARTS + " parts");
            }
            byte[] buffer = new byte[1 << 16];
            for (Enumeration<? extends ZipEntry> e = zip.entries(); e.hasMoreElements(); ) {
                ZipEntry part = e.nextElement();
                long most = Math.min(
                        part.getName().contains("sharedStrings") ? MOST_SHARED : MOST_BYTES,
                        Math.max(ALWAYS_ALLOWED, MOST_RATIO * Math.max(0, part.getCompressedSize())));
                try (InputStream in = new Bounded(
                        zip.getInputStream(part),
                        Math.min(most, MOST_BYTES - total),
                        "refused: the workbook unpacks to far more than its size, as one made to fill a machine does")) {
                    boolean first = true;
                    for (int n = in.readNBytes(buffer, 0, buffer.length);
                            n > 0;
                            n = in.readNBytes(buffer, 0, buffer.length)) {
                        total += n;
                        if (first && declaresEntities(buffer, n)) {
                            throw new TableException("refused: a part of the workbook declares entities of its own");
                        }
                        first = false;
                    }
                }
            }
        } catch (ZipException e) {
            throw new TableException("no workbook (xlsx), or one that is cut short or damaged");
        }
    }

    /**
     * True when the workbook, checked before, names styles: without them there are no formats of numbers to read, and
     * its reader insists on the part.
     */
    static boolean styled(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry types = zip.getEntry("[Content_Types].xml");
            if (types == null) {
                return false;
            }
            try (InputStream in = zip.getInputStream(types)) {
                return new String(in.readNBytes(MOST_TYPES), java.nio.charset.StandardCharsets.UTF_8)
                        .contains("spreadsheetml.styles+xml");
            }
        }
    }

    private static boolean declaresEntities(byte[] start, int n) {
        return new String(start, 0, Math.min(n, 4096), java.nio.charset.StandardCharsets.ISO_8859_1)
                .contains("<!DOCTYPE");
    }
}
