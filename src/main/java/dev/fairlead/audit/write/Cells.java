package dev.fairlead.audit.write;

/** Texts from case files as cells of a table: never a formula, and never more than one line. */
final class Cells {
    /** What spreadsheets take for the start of a formula, full-width forms included (OWASP, CSV Injection). */
    private static final String STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20|";

    private Cells() {}

    /** The text with an apostrophe before it where a spreadsheet would take it for a formula. */
    static String safe(String text) {
        if (text.isEmpty()) {
            return text;
        }
        String line = text.indexOf('\n') < 0 && text.indexOf('\r') < 0 ? text : text.replaceAll("[\\r\\n]+", " ");
        return STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + line : line;
    }
}
