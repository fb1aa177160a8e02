package dev.fairlead.audit.source;

import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.jspecify.annotations.Nullable;

/** Reads a sheet of a workbook as a table of one case a row. */
final class XlsxTable {
    /**
     * Days are counted from here, or from the first day of 1904 where a workbook says so (ECMA-376 part 1, 18.17.4.1;
     * dates before March 1900 aside).
     */
    private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 30);

    private static final LocalDate FIRST_1904 = LocalDate.of(1904, 1, 1);

    private XlsxTable() {}

    static void read(Path file, String source, long before, TableOptions options, Consumer<Item> sink)
            throws IOException, TableException {
        XlsxGuard.check(file);
        try (ReadableWorkbook book =
                new ReadableWorkbook(file.toFile(), new ReadingOptions(XlsxGuard.styled(file), true))) {
            Sheet sheet = sheet(book, options);
            List<List<String>> first = first(sheet);
            int heading = HeadingRow.orFirst(first, options);
            Columns columns = Columns.of(first.get(heading), options.mapping());
            MergedCells merged = MergedCells.of(file, sheet.getIndex(), heading + 1);
            boolean several = book.getSheets().count() > 1;
            try (Stream<Row> stream = sheet.openStream()) {
                Iterator<Row> rows = stream.iterator();
                while (rows.hasNext()) {
                    Row row = rows.next();
                    if (row.getRowNum() > heading + 1
                            && row.getFirstNonEmptyCell().isPresent()) {
                        Item.Row made = row(row, columns, merged, book.isDate1904(), options.strict());
                        if (made != null) {
                            sink.accept(new Item(
                                    source + (several ? " sheet " + FileNames.shown(sheet.getName()) : "") + " row "
                                            + row.getRowNum(),
                                    made,
                                    before));
                        }
                    }
                }
            }
        } catch (ExcelReaderException
                | IllegalStateException
                | IndexOutOfBoundsException
                | NumberFormatException
                | java.io.UncheckedIOException e) {
            // the reader tells a damaged sheet by one of these
            throw new TableException("the workbook is damaged (" + Sources.why(e) + ")");
        }
    }

    /** The sheet that is named, else the first with a heading of fields, else the first. */
    private static Sheet sheet(ReadableWorkbook book, TableOptions options) throws IOException, TableException {
        List<Sheet> all = book.getSheets().toList();
        for (Sheet s : all) {
            if (options.sheet().isEmpty()
                    ? all.size() == 1 || HeadingRow.find(first(s), options) >= 0 && options.headingRow() == 0
                    : s.getName().equalsIgnoreCase(options.sheet())) {
                return s;
            }
        }
        if (!options.sheet().isEmpty()) {
            throw new TableException("no sheet is called " + TableFields.quoted(options.sheet()) + "; there are "
                    + String.join(
                            ", ",
                            all.stream()
                                    .map(s -> TableFields.quoted(s.getName()))
                                    .toList()));
        }
        return all.get(0);
    }

    /** The first rows as texts, each at its number in the sheet. */
    static List<List<String>> first(Sheet sheet) throws IOException {
        List<List<String>> first = new ArrayList<>();
        try (Stream<Row> stream = sheet.openStream()) {
            Iterator<Row> rows = stream.iterator();
            while (rows.hasNext() && first.size() < HeadingRow.SEARCHED) {
                Row row = rows.next();
                while (first.size() < row.getRowNum() - 1 && first.size() < HeadingRow.SEARCHED) {
                    first.add(List.of());
                }
                List<String> cells = new ArrayList<>();
                for (int i = 0; i < row.getCellCount(); i++) {
                    Cell c = row.getCell(i);
                    cells.add(c == null || c.getText() == null ? "" : c.getText());
                }
                first.add(cells);
            }
        }
        return first;
    }

    /** Null for a row without anything in the columns that are read. */
    private static Item.@Nullable Row row(
            Row row, Columns columns, MergedCells merged, boolean first1904, boolean strict) {
        List<String> cells = new ArrayList<>();
        Map<Integer, String> bad = new LinkedHashMap<>();
        for (int i = 0; i < columns.width(); i++) {
            Cell c = i < row.getCellCount() ? row.getCell(i) : null;
            FieldShape field = columns.field(i);
            String cell = "";
            if (c != null && field != null) {
                try {
                    cell = text(c, field, first1904);
                } catch (TableException e) {
                    bad.put(i, e.getMessage());
                } catch (ExcelReaderException
                        | ArithmeticException
                        | java.time.DateTimeException
                        | IllegalArgumentException e) {
                    bad.put(i, "cell " + c.getAddress() + " cannot be read (" + Sources.why(e) + ")");
                }
            }
            cells.add(merged.filled(row.getRowNum(), i, cell));
        }
        return HeadingRow.blank(cells) && bad.isEmpty()
                ? null
                : new Item.Row(new TableRow(columns, cells, bad, strict));
    }

    /** The cell as a person would type it into a case. */
    private static String text(Cell c, FieldShape field, boolean first1904) throws TableException {
        if (c.getType() == CellType.ERROR) {
            throw new TableException("cell " + c.getAddress() + " holds an error of the sheet");
        }
        if (c.getType() == CellType.NUMBER || c.getType() == CellType.FORMULA && c.getValue() instanceof BigDecimal) {
            BigDecimal number = (BigDecimal) c.getValue();
            if (field.kind() == Kind.DATE) {
                return (first1904 ? FIRST_1904 : BEFORE_1900)
                        .plusDays(number.setScale(0, RoundingMode.FLOOR).longValueExact())
                        .toString();
            }
            String format = c.getDataFormatString();
            if (format != null && format.contains("%")) {
                return number.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
            }
            return rounded(number).toPlainString();
        }
        if (c.getType() == CellType.FORMULA
                && (c.getValue() == null || c.getText() == null || c.getText().isEmpty())) {
            throw new TableException("cell " + c.getAddress()
                    + " holds a formula without its result: open the workbook, let it calculate, and save it");
        }
        if (c.getType() == CellType.BOOLEAN) {
            return c.asBoolean() ? "yes" : "no";
        }
        return c.getText();
    }

    /** Workbooks keep 5.4 as 5.4000000000000004: fifteen digits are what they know. */
    private static BigDecimal rounded(BigDecimal number) {
        BigDecimal r = number.round(new java.math.MathContext(15)).stripTrailingZeros();
        return r.scale() < 0 ? r.setScale(0) : r;
    }
}
