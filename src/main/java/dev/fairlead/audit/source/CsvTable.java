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
import java.util.function.Consumer;

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

    static void read(InputStream in, String source, long before, Mapping mapping, Consumer<Item> sink)
            throws IOException, TableException {
        long line = 1;
        long reached = before;
        try (Rows rows = new Rows(in)) {
            List<String> heading = rows.next();
            if (heading == null) {
                throw new TableException("the table is empty: a first row names the fields");
            }
            Columns columns = Columns.of(heading, mapping);
            List<String> row = rows.next();
            if (row == null) {
                throw new TableException("the table has a heading and no rows");
            }
            for (; row != null; row = rows.next()) {
                line = rows.line();
                reached = before + rows.bytes();
                List<String> cells = row;
                sink.accept(new Item(source + ":" + line, new Item.Row(() -> columns.json(cells)), reached));
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

    /** The rows of a table one after the other. */
    static final class Rows implements AutoCloseable {
        private final CsvParser parser;
        private long line;

        Rows(InputStream in) throws IOException {
            InputStream marked = in.markSupported() ? in : new java.io.BufferedInputStream(in);
            marked.mark(HEADING_BYTES);
            String start = new String(marked.readNBytes(HEADING_BYTES), java.nio.charset.StandardCharsets.UTF_8);
            marked.reset();
            String header = start.stripLeading().lines().findFirst().orElse("");
            char separator = header.indexOf(';') >= 0 ? ';' : header.indexOf('\t') >= 0 ? '\t' : ',';
            parser = CSV.createParser(marked);
            parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
        }

        /** The next row, or null behind the last. */
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
