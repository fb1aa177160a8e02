package dev.fairlead.audit.source;

import java.util.List;

/** Finds the row of a table that names the fields, below a title or cover if need be. */
final class HeadingRow {
    /** The heading stands within so many rows. */
    static final int SEARCHED = 30;

    private HeadingRow() {}

    /** Index of the heading among the first rows; -1 where there is none with two known fields. */
    static int find(List<List<String>> rows, TableOptions options) {
        if (options.headingRow() > 0) {
            return options.headingRow() <= rows.size() ? options.headingRow() - 1 : -1;
        }
        for (int r = 0; r < rows.size(); r++) {
            if (known(rows.get(r), options.mapping()) >= 2) {
                return r;
            }
        }
        return -1;
    }

    /** The heading, or the first row that is not blank, of which reading then tells what is not understood. */
    static int orFirst(List<List<String>> rows, TableOptions options) throws TableException {
        int found = find(rows, options);
        if (found < 0 && options.headingRow() > 0) {
            throw new TableException("there is no row " + options.headingRow() + " (--header-row)");
        }
        for (int r = 0; found < 0 && r < rows.size(); r++) {
            found = blank(rows.get(r)) ? -1 : r;
        }
        if (found < 0) {
            throw new TableException("the table is empty: a first row names the fields");
        }
        return found;
    }

    private static int known(List<String> cells, Mapping mapping) {
        int n = 0;
        for (String cell : cells) {
            String heading = cell == null ? "" : cell.strip();
            n += !heading.isEmpty() && (mapping.columns().containsKey(heading) || TableFields.pointer(heading) != null)
                    ? 1
                    : 0;
        }
        return n;
    }

    static boolean blank(List<String> cells) {
        return cells.stream().allMatch(c -> c == null || c.isBlank());
    }
}
