package dev.fairlead.audit.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Recognises what the program wrote itself, so that a folder can be audited again with its results beside it. */
final class OwnOutputs {
    private static final int START = 400;

    private OwnOutputs() {}

    /** True for reports, summaries and rows of audits; never for a case or a table of cases. */
    static boolean is(Path file) {
        try {
            return switch (FileNames.kind(file.getFileName().toString())) {
                case LINES -> start(file).startsWith("{\"source\":");
                case CSV ->
                    start(file).startsWith("source,case,hash,") || start(file).startsWith("source,kind,problem");
                case CASE -> start(file).matches("(?s)\\{\\s*\"format\"\\s*:\\s*\\d+,\\s*\"tool\"\\s*:.*");
                case XLSX -> workbook(file);
                default -> false;
            };
        } catch (IOException e) {
            // what cannot be looked into is told when its turn comes
            return false;
        }
    }

    private static String start(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(START), StandardCharsets.UTF_8);
        }
    }

    private static boolean workbook(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry book = zip.getEntry("xl/workbook.xml");
            if (book == null) {
                return false;
            }
            try (InputStream in = zip.getInputStream(book)) {
                String sheets = new String(in.readNBytes(1 << 16), StandardCharsets.UTF_8);
                return sheets.contains("name=\"cases\"") && sheets.contains("name=\"criteria\"");
            }
        }
    }
}
