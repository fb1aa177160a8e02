package dev.fairlead.audit.source;

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

    /** A name from a file system or an archive, without characters that could steer a terminal or a page. */
    static String shown(String name) {
        StringBuilder out = new StringBuilder();
        name.codePoints()
                .limit(LONGEST)
                .forEach(c -> out.appendCodePoint(
                        Character.isISOControl(c)
                                        || Character.getType(c) == Character.FORMAT
                                        || Character.getType(c) == Character.SURROGATE
                                ? '?'
                                : c));
        return out.toString();
    }
}
