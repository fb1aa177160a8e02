package dev.fairlead.audit.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Cells of a sheet that are merged: what stands in the first of a column counts for all rows below it. Cells merged
 * across columns are refused, for nobody can tell which column is meant.
 */
final class MergedCells {
    private static final Pattern MERGED =
            Pattern.compile("<(?:\\w+:)?mergeCell\\s+ref=\"([A-Z]{1,3})(\\d{1,7}):([A-Z]{1,3})(\\d{1,7})\"");
    private static final int OVERLAP = 200;

    /** Column and row to the first row of its range. */
    private final Map<Long, Integer> firstRow = new HashMap<>();

    private final Map<Long, String> texts = new HashMap<>();

    private MergedCells() {}

    /** Of the sheet at that index; what is merged above and in the heading row does not matter. */
    static MergedCells of(Path file, int sheet, int headingRow) throws IOException, TableException {
        MergedCells all = new MergedCells();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry part = zip.getEntry("xl/worksheets/sheet" + (sheet + 1) + ".xml");
            if (part == null) {
                return all;
            }
            try (InputStream in = zip.getInputStream(part)) {
                byte[] buffer = new byte[1 << 16];
                String kept = "";
                for (int n = in.readNBytes(buffer, 0, buffer.length);
                        n > 0;
                        n = in.readNBytes(buffer, 0, buffer.length)) {
                    String text = kept + new String(buffer, 0, n, StandardCharsets.ISO_8859_1);
                    Matcher m = MERGED.matcher(text);
                    while (m.find()) {
                        all.add(
                                m.group(1),
                                Integer.parseInt(m.group(2)),
                                m.group(3),
                                Integer.parseInt(m.group(4)),
                                headingRow);
                    }
                    kept = text.substring(Math.max(0, text.length() - OVERLAP));
                }
            }
        }
        return all;
    }

    private void add(String fromColumn, int fromRow, String toColumn, int toRow, int headingRow) throws TableException {
        if (toRow <= headingRow) {
            return;
        }
        if (!fromColumn.equals(toColumn)) {
            throw new TableException("cells " + fromColumn + fromRow + ":" + toColumn + toRow
                    + " are merged across columns: unmerge them and write in each cell what it holds");
        }
        for (int row = fromRow; row <= toRow; row++) {
            firstRow.put(key(row, column(fromColumn)), fromRow);
        }
    }

    private static int column(String letters) {
        int n = 0;
        for (int i = 0; i < letters.length(); i++) {
            n = 26 * n + letters.charAt(i) - 'A' + 1;
        }
        return n - 1;
    }

    private static long key(int row, int column) {
        return ((long) row << 20) + column;
    }

    /** What counts at a place where {@code cell} stands; rows are to be asked from the top. */
    String filled(int row, int column, String cell) {
        if (firstRow.isEmpty()) {
            return cell;
        }
        Integer first = firstRow.get(key(row, column));
        if (first == null) {
            return cell;
        }
        if (first == row) {
            texts.put(key(row, column), cell);
            return cell;
        }
        return texts.getOrDefault(key(first, column), cell);
    }
}
