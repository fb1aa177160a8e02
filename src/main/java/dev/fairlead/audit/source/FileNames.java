package dev.fairlead.audit.source;

import dev.fairlead.intake.spelling.Visible;
import java.util.Locale;

/** Names of files and entries: their kind by ending, and how they are shown. */
final class FileNames {
    private static final int LONGEST = 200;

    private FileNames() {}

    /** What a file is, by its ending. */
    enum Kind {
        CASE,
        LINES,
        CSV,
        XLSX,
        ZIP,
        OTHER
    }

    static Kind kind(String name) {
        String n = name.toLowerCase(Locale.ROOT);
        if (n.endsWith(".json") || n.endsWith(".yaml") || n.endsWith(".yml")) {
            return Kind.CASE;
        }
        if (n.endsWith(".ndjson") || n.endsWith(".jsonl")) {
            return Kind.LINES;
        }
        return n.endsWith(".csv") || n.endsWith(".tsv")
                ? Kind.CSV
                : n.endsWith(".xlsx") ? Kind.XLSX : n.endsWith(".zip") ? Kind.ZIP : Kind.OTHER;
    }

    /**
     * A name from a file system or an archive on one line, without characters that could steer a terminal or a page.
     */
    static String shown(String name) {
        String begin = name.codePointCount(0, name.length()) > LONGEST
                ? name.substring(0, name.offsetByCodePoints(0, LONGEST))
                : name;
        return Visible.of(begin.replaceAll("[\\r\\n\\t]", "?"));
    }
}
