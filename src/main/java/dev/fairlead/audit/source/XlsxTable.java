package dev.fairlead.audit.source;

import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
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
    private XlsxTable() {}

    static void read(Path file, String source, long before, Mapping mapping, Consumer<Item> sink) throws IOException, TableException {
        XlsxGuard.check(file);
        try (ReadableWorkbook book = new ReadableWorkbook(file.toFile(), new ReadingOptions(true, true)); Stream<Row> stream = book.getFirstSheet().openStream()) {
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
                    sink.accept(new Item(source + " row " + row.getRowNum(), content(row, columns), before));
                }
            }
        } catch (ExcelReaderException | IllegalStateException | IndexOutOfBoundsException | java.io.UncheckedIOException e) {
            // the reader tells a damaged sheet by one of these
            throw new TableException("the workbook is damaged: " + Names.shown(String.valueOf(e.getMessage())));
        }
    }

    private static Item.Content content(Row row, Columns columns) {
        try {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < Math.min(row.getCellCount(), columns.width()); i++) {
                Cell c = row.getCell(i);
                cells.add(c == null || columns.field(i) == null ? "" : text(c, columns.field(i)));
            }
            return new Item.Row(() -> columns.json(cells));
        } catch (TableException e) {
            return new Item.Trouble(e.getMessage());
        }
    }

    /** The cell as a person would type it into a case. */
    private static String text(Cell c, FieldShape field) throws TableException {
        if (c.getType() == CellType.ERROR) {
            throw new TableException("cell " + c.getAddress() + " holds an error of the sheet");
        }
        if (c.getType() == CellType.NUMBER || c.getType() == CellType.FORMULA && c.getValue() instanceof BigDecimal) {
            if (field.kind() == Kind.DATE) {
                return c.asDate().toLocalDate().toString();
            }
            BigDecimal number = c.asNumber();
            String format = c.getDataFormatString();
            if (format != null && format.contains("%")) {
                return number.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
            }
            return rounded(number).toPlainString();
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
