package dev.fairlead.audit.source;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads a table of one case a row, divided by commas, semicolons or tabs, row by row. */
final class CsvTable {
    private static final int LONGEST_CELL = 10_000;
    private static final int MOST_COLUMNS = 5_000;
    private static final int HEADING_BYTES = 1 << 16;
    private static final CsvFactory CSV = CsvFactory.builder()
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxStringLength(LONGEST_CELL)
                    .build())
            .build();

    private CsvTable() {}

    static void read(InputStream in, String source, long before, TableOptions options, Consumer<Item> sink)
            throws IOException, TableException {
        long line = 1;
        long reached = before;
        try (Rows rows = new Rows(in)) {
            List<List<String>> first = new ArrayList<>();
            List<Long> lines = new ArrayList<>();
            int heading = -1;
            for (List<String> row = rows.next(); row != null && first.size() < HeadingRow.SEARCHED; row = rows.next()) {
                first.add(row);
                lines.add(rows.line());
                heading = HeadingRow.find(first, options);
                if (heading >= 0) {
                    break;
                }
            }
            heading = heading >= 0 ? heading : HeadingRow.orFirst(first, options);
            Columns columns = Columns.of(first.get(heading), options.mapping());
            boolean any = false;
            for (int i = heading + 1; i < first.size(); i++) {
                any |= item(source, lines.get(i), first.get(i), columns, options, before, sink);
            }
            for (List<String> row = rows.next(); row != null; row = rows.next()) {
                line = rows.line();
                reached = before + rows.bytes();
                any |= item(source, line, row, columns, options, reached, sink);
            }
            if (!any) {
                throw new TableException("the table has a heading and no rows");
            }
        } catch (CharConversionException e) {
            sink.accept(new Item(
                    source,
                    new Item.Trouble("the table is not text in UTF-8: save it as \"CSV UTF-8\"; "
                            + (line == 1 ? "no row" : "no row behind line " + line) + " was audited"),
                    reached));
        } catch (JsonProcessingException e) {
            sink.accept(new Item(
                    source,
                    new Item.Trouble("from the row after line " + line
                            + " on the table cannot be read: look for an open quotation mark or a cell of more than "
                            + LONGEST_CELL + " characters; no row behind it was audited"),
                    reached));
        }
    }

    /** Hands on a row; false for one of separators only. */
    private static boolean item(
            String source,
            long line,
            List<String> cells,
            Columns columns,
            TableOptions options,
            long reached,
            Consumer<Item> sink) {
        if (HeadingRow.blank(cells)) {
            return false;
        }
        sink.accept(new Item(
                source + ":" + line, new Item.Row(new TableRow(columns, cells, Map.of(), options.strict())), reached));
        return true;
    }

    /** The rows of a table one after the other. */
    static final class Rows implements AutoCloseable {
        private final CsvParser parser;
        private long line;

        Rows(InputStream in) throws IOException {
            InputStream marked = in.markSupported() ? in : new java.io.BufferedInputStream(in);
            marked.mark(HEADING_BYTES);
            String start = new String(marked.readNBytes(HEADING_BYTES), java.nio.charset.StandardCharsets.UTF_8);
            marked.reset();
            char separator = separator(start);
            parser = CSV.createParser(marked);
            parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
        }

        /** What divides the line with the most cells of text, the heading: a title above it divides nothing. */
        private static char separator(String start) {
            String fullest = "";
            long most = -1;
            for (String line : start.lines().limit(HeadingRow.SEARCHED).toList()) {
                long n = Stream.of(line.split("[;\t,]"))
                        .filter(c -> c.matches("\\W*\\p{L}.*"))
                        .count();
                if (n > most) {
                    most = n;
                    fullest = line;
                }
            }
            return fullest.indexOf(';') >= 0 ? ';' : fullest.indexOf('\t') >= 0 ? '\t' : ',';
        }

        /** The next row, or null behind the last. */
        @Nullable
        List<String> next() throws IOException {
            if (parser.nextToken() != JsonToken.START_ARRAY) {
                return null;
            }
            List<String> cells = new ArrayList<>();
            line = -1;
            while (parser.nextToken() == JsonToken.VALUE_STRING) {
                line = line < 0 ? parser.currentTokenLocation().getLineNr() : line;
                if (cells.size() < MOST_COLUMNS) {
                    cells.add(parser.getText());
                }
            }
            return cells;
        }

        long line() {
            return line;
        }

        long bytes() {
            long characters = parser.currentLocation().getCharOffset();
            return Math.max(0, Math.max(characters, parser.currentLocation().getByteOffset()));
        }

        @Override
        public void close() throws IOException {
            parser.close();
        }
    }
}
