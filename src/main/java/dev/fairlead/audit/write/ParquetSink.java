package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.apache.parquet.format.ColumnChunk;
import org.apache.parquet.format.ColumnMetaData;
import org.apache.parquet.format.CompressionCodec;
import org.apache.parquet.format.DataPageHeader;
import org.apache.parquet.format.DictionaryPageHeader;
import org.apache.parquet.format.Encoding;
import org.apache.parquet.format.FileMetaData;
import org.apache.parquet.format.PageHeader;
import org.apache.parquet.format.PageType;
import org.apache.parquet.format.RowGroup;
import org.apache.parquet.format.SchemaElement;
import org.apache.parquet.format.Util;

/**
 * One finding a row as Apache Parquet: texts, days and numbers by dictionary, answers as bits, packed by gzip. Page
 * headers and footer are written by the format's own library; its full writer would bring a cluster's file system with
 * it.
 */
public final class ParquetSink implements RowSink {
    private static final byte[] MAGIC = "PAR1".getBytes(StandardCharsets.US_ASCII);
    private static final int GROUP_ROWS = 1 << 17;

    private final OutputStream out;
    private final FindingRows rows;
    /** Where the cells of a criterion and its ending stand in the dictionaries of the open row group. */
    private final int[][][] endings;

    private final String tool;
    private final int groupRows;
    private final List<Column> columns = new ArrayList<>();
    private final List<RowGroup> groups = new ArrayList<>();
    private long at;
    private long total;
    private int inGroup;

    /** Values of one column of the open row group. */
    private static final class Column {
        private final Map<String, Integer> dictionary = new LinkedHashMap<>();
        private final int[] values;

        Column(int rows) {
            values = new int[rows];
        }
    }

    public ParquetSink(Catalogue catalogue, OutputStream out, String tool) throws IOException {
        this(catalogue, out, tool, GROUP_ROWS);
    }

    /** With another number of rows a group, for tests. */
    ParquetSink(Catalogue catalogue, OutputStream out, String tool, int groupRows) throws IOException {
        this.out = new BufferedOutputStream(out, 1 << 16);
        this.rows = new FindingRows(catalogue);
        this.endings = new int[catalogue.criteria().size()][Ending.values().length][];
        this.tool = tool;
        this.groupRows = groupRows;
        FindingRows.TYPED.forEach(c -> columns.add(new Column(groupRows)));
        write(MAGIC);
    }

    @Override
    public void row(CaseRow row) throws IOException {
        if (!row.judged()) {
            put(0, places(0, FindingRows.notJudged(row)));
            next();
            return;
        }
        int[] first = null;
        for (int i = 0; i < row.endings().length; i++) {
            int e = row.endings()[i];
            if (e >= 0) {
                if (first == null) {
                    first = places(0, FindingRows.ofCase(row));
                }
                if (endings[i][e] == null) {
                    endings[i][e] = places(FindingRows.OF_CASE, rows.ofEnding(i, Ending.values()[e]));
                }
                put(0, first);
                put(FindingRows.OF_CASE, endings[i][e]);
                put(
                        FindingRows.OF_CASE + FindingRows.OF_ENDING,
                        places(FindingRows.OF_CASE + FindingRows.OF_ENDING, rows.last(row, i)));
                if (next()) {
                    first = null;
                }
            }
        }
    }

    /** Where these cells stand in the dictionaries of their columns, from column {@code from} on. */
    private int[] places(int from, String[] cells) {
        int[] places = new int[cells.length];
        for (int i = 0; i < cells.length; i++) {
            Map<String, Integer> dictionary = columns.get(from + i).dictionary;
            Integer index = dictionary.get(cells[i]);
            if (index == null) {
                index = dictionary.size();
                dictionary.put(cells[i], index);
            }
            places[i] = index;
        }
        return places;
    }

    private void put(int from, int[] places) {
        for (int i = 0; i < places.length; i++) {
            columns.get(from + i).values[inGroup] = places[i];
        }
    }

    /** Goes on to the next row; true when a new group with new dictionaries begins with it. */
    private boolean next() throws IOException {
        boolean full = ++inGroup == groupRows;
        if (full) {
            group();
        }
        return full;
    }

    private void group() throws IOException {
        if (inGroup == 0) {
            return;
        }
        List<ColumnChunk> chunks = new ArrayList<>();
        long bytes = 0;
        for (int i = 0; i < columns.size(); i++) {
            ColumnChunk chunk = chunk(columns.get(i), FindingRows.TYPED.get(i));
            bytes += chunk.getMeta_data().getTotal_uncompressed_size();
            chunks.add(chunk);
        }
        groups.add(new RowGroup(chunks, bytes, inGroup));
        total += inGroup;
        inGroup = 0;
        for (int[][] of : endings) {
            Arrays.fill(of, null);
        }
    }

    private ColumnChunk chunk(Column c, FindingRows.Column of) throws IOException {
        boolean answers = of.type() == FindingRows.Type.ANSWER;
        ParquetColumn page = ParquetColumn.of(of.type(), c.dictionary.keySet(), c.values, inGroup);
        long first = at;
        long plain = 0;
        if (!answers) {
            PageHeader dictionary = new PageHeader(PageType.DICTIONARY_PAGE, page.dictionary().length, 0);
            dictionary.setDictionary_page_header(new DictionaryPageHeader(page.entries(), Encoding.PLAIN));
            plain += page(dictionary, page.dictionary());
        }
        long dataAt = at;
        PageHeader header = new PageHeader(PageType.DATA_PAGE, page.data().length, 0);
        header.setData_page_header(new DataPageHeader(
                inGroup, answers ? Encoding.PLAIN : Encoding.RLE_DICTIONARY, Encoding.RLE, Encoding.RLE));
        plain += page(header, page.data());
        ColumnMetaData meta = new ColumnMetaData(
                ParquetColumn.type(of.type()),
                List.of(Encoding.PLAIN, Encoding.RLE, Encoding.RLE_DICTIONARY),
                List.of(of.name()),
                CompressionCodec.GZIP,
                inGroup,
                plain,
                at - first,
                dataAt);
        if (!answers) {
            meta.setDictionary_page_offset(first);
        }
        ColumnChunk chunk = new ColumnChunk(first);
        chunk.setMeta_data(meta);
        c.dictionary.clear();
        return chunk;
    }

    /** Writes a page; returns its bytes before packing, header included. */
    private long page(PageHeader header, byte[] body) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(body);
        }
        header.setCompressed_page_size(packed.size());
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        Util.writePageHeader(header, head);
        write(head.toByteArray());
        write(packed.toByteArray());
        return head.size() + (long) body.length;
    }

    @Override
    public void end(Heading heading, Summary summary) throws IOException {
        group();
        List<SchemaElement> schema = new ArrayList<>();
        SchemaElement root = new SchemaElement("findings");
        root.setNum_children(columns.size());
        schema.add(root);
        FindingRows.TYPED.forEach(c -> schema.add(ParquetColumn.schema(c)));
        FileMetaData meta = new FileMetaData(1, schema, total, groups);
        meta.setCreated_by("fairlead version " + tool);
        ByteArrayOutputStream footer = new ByteArrayOutputStream();
        Util.writeFileMetaData(meta, footer);
        write(footer.toByteArray());
        int n = footer.size();
        write(new byte[] {(byte) n, (byte) (n >>> 8), (byte) (n >>> 16), (byte) (n >>> 24)});
        write(MAGIC);
        out.flush();
    }

    private void write(byte[] bytes) throws IOException {
        out.write(bytes);
        at += bytes.length;
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
