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
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;

/** Reads a workbook's first sheet as a table of one case a row. */
final class XlsxTable {
    /**
     * Days are counted from here, or from the first day of 1904 where a workbook says so (ECMA-376 part 1, 18.17.4.1;
     * dates before March 1900 aside).
     */
    private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 30);

    private static final LocalDate FIRST_1904 = LocalDate.of(1904, 1, 1);

    private XlsxTable() {}

    static void read(Path file, String source, long before, Mapping mapping, Consumer<Item> sink)
            throws IOException, TableException {
        XlsxGuard.check(file);
        try (ReadableWorkbook book =
                        new ReadableWorkbook(file.toFile(), new ReadingOptions(XlsxGuard.styled(file), true));
                Stream<Row> stream = book.getFirstSheet().openStream()) {
            Iterator<Row> rows = stream.iterator();
            if (!rows.hasNext()) {
                throw new TableException("the first sheet is empty: its first row names the fields");
            }
            Row heading = rows.next();
            List<String> headings = new ArrayList<>();
            for (int i = 0; i < heading.getCellCount(); i++) {
                Cell c = heading.getCell(i);
                headings.add(c == null ? "" : c.getText());
            }
            Columns columns = Columns.of(headings, mapping);
            while (rows.hasNext()) {
                Row row = rows.next();
                if (row.getFirstNonEmptyCell().isPresent()) {
                    sink.accept(new Item(
                            source + " row " + row.getRowNum(), content(row, columns, book.isDate1904()), before));
                }
            }
        } catch (ExcelReaderException
                | IllegalStateException
                | IndexOutOfBoundsException
                | NumberFormatException
                | java.io.UncheckedIOException e) {
            // the reader tells a damaged sheet by one of these
            throw new TableException("the workbook is damaged: " + FileNames.shown(String.valueOf(e.getMessage())));
        }
    }

    private static Item.Content content(Row row, Columns columns, boolean first1904) {
        try {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < Math.min(row.getCellCount(), columns.width()); i++) {
                Cell c = row.getCell(i);
                cells.add(c == null || columns.field(i) == null ? "" : text(c, columns.field(i), first1904));
            }
            return new Item.Row(() -> columns.json(cells));
        } catch (TableException e) {
            return new Item.Trouble(e.getMessage());
        } catch (ExcelReaderException
                | ArithmeticException
                | java.time.DateTimeException
                | IllegalArgumentException e) {
            return new Item.Trouble(
                    "a cell of the row cannot be read (" + FileNames.shown(String.valueOf(e.getMessage())) + ")");
        }
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
