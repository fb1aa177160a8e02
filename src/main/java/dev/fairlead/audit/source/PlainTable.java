package dev.fairlead.audit.source;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** A small table (CSV or XLSX) that is read whole: rows of texts by heading. */
public final class PlainTable {
    private static final int MOST_ROWS = 2_000_000;

    private PlainTable() {}

    /** The rows, each with the headings in lower case; blank rows are left out. */
    public static List<Map<String, String>> read(Path file) throws IOException, TableException {
        List<List<String>> rows =
                file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx") ? workbook(file) : lines(file);
        if (rows.isEmpty()) {
            throw new TableException(file + ": the table is empty");
        }
        List<String> heading = rows.get(0).stream()
                .map(h -> h.strip().toLowerCase(Locale.ROOT))
                .toList();
        List<Map<String, String>> all = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < Math.min(row.size(), heading.size()); i++) {
                cells.putIfAbsent(heading.get(i), row.get(i).strip());
            }
            if (cells.values().stream().anyMatch(c -> !c.isEmpty())) {
                all.add(cells);
            }
        }
        return all;
    }

    private static List<List<String>> lines(Path file) throws IOException, TableException {
        List<List<String>> all = new ArrayList<>();
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file));
                CsvTable.Rows rows = new CsvTable.Rows(in)) {
            for (List<String> row = rows.next(); row != null; row = rows.next()) {
                all.add(row);
                if (all.size() > MOST_ROWS) {
                    throw new TableException(file + ": more than " + MOST_ROWS + " rows");
                }
            }
        } catch (JsonProcessingException e) {
            throw new TableException(
                    file + ": no table behind row " + all.size() + ": look for an open quotation mark");
        }
        return all;
    }

    private static List<List<String>> workbook(Path file) throws IOException, TableException {
        XlsxGuard.check(file);
        List<List<String>> all = new ArrayList<>();
        try (ReadableWorkbook book = new ReadableWorkbook(file.toFile());
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            rows.forEach(row -> {
                List<String> cells = new ArrayList<>();
                for (int i = 0; i < row.getCellCount(); i++) {
                    Cell c = row.getCell(i);
                    cells.add(c == null || c.getText() == null ? "" : c.getText());
                }
                all.add(cells);
            });
        } catch (ExcelReaderException
                | IllegalStateException
                | IndexOutOfBoundsException
                | NumberFormatException
                | java.io.UncheckedIOException e) {
            throw new TableException(file + ": the workbook is damaged");
        }
        return all;
    }
}
