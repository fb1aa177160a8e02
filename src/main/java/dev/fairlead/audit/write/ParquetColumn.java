package dev.fairlead.audit.write;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collection;
import org.apache.parquet.format.ConvertedType;
import org.apache.parquet.format.DateType;
import org.apache.parquet.format.FieldRepetitionType;
import org.apache.parquet.format.LogicalType;
import org.apache.parquet.format.SchemaElement;
import org.apache.parquet.format.StringType;
import org.apache.parquet.format.Type;

/**
 * One column of a row group as bytes of the format: texts are never null; an empty day, number or answer is null.
 *
 * @param dictionary each value once, plain; empty for answers
 * @param entries how many values stand in it
 * @param data which cells hold something, and which value of the dictionary, or the answers themselves
 */
record ParquetColumn(byte[] dictionary, int entries, byte[] data) {
    /** Cells as numbers of texts; {@code texts} in the order of these numbers. */
    static ParquetColumn of(FindingRows.Type type, Collection<String> texts, int[] cells, int rows) {
        int[] place = new int[texts.size()];
        boolean[] yes = new boolean[texts.size()];
        ByteArrayOutputStream dictionary = new ByteArrayOutputStream();
        int i = 0;
        int entries = 0;
        for (String text : texts) {
            boolean empty = text.isEmpty() && type != FindingRows.Type.TEXT;
            yes[i] = text.equals("yes");
            place[i++] = empty ? -1 : entries;
            if (!empty) {
                entries++;
                if (type != FindingRows.Type.ANSWER) {
                    dictionary.writeBytes(plain(type, text));
                }
            }
        }
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        int[] present = new int[rows];
        int[] values = new int[rows];
        int n = 0;
        for (int r = 0; r < rows; r++) {
            int at = place[cells[r]];
            present[r] = at < 0 ? 0 : 1;
            if (at >= 0) {
                values[n++] = type == FindingRows.Type.ANSWER ? yes[cells[r]] ? 1 : 0 : at;
            }
        }
        if (type != FindingRows.Type.TEXT) {
            byte[] levels = HybridEncoder.of(present, rows, 1);
            data.writeBytes(little(levels.length));
            data.writeBytes(levels);
        }
        if (type == FindingRows.Type.ANSWER) {
            data.writeBytes(bits(values, n));
        } else {
            int bits = 32 - Integer.numberOfLeadingZeros(Math.max(0, entries - 1));
            data.write(bits);
            data.writeBytes(HybridEncoder.of(values, n, bits));
        }
        return new ParquetColumn(dictionary.toByteArray(), entries, data.toByteArray());
    }

    private static byte[] plain(FindingRows.Type type, String text) {
        return switch (type) {
            case DAY -> little((int) LocalDate.parse(text).toEpochDay());
            case NUMBER ->
                ByteBuffer.allocate(8)
                        .order(ByteOrder.LITTLE_ENDIAN)
                        .putDouble(Double.parseDouble(text))
                        .array();
            default -> {
                byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
                yield ByteBuffer.allocate(4 + utf8.length)
                        .order(ByteOrder.LITTLE_ENDIAN)
                        .putInt(utf8.length)
                        .put(utf8)
                        .array();
            }
        };
    }

    private static byte[] little(int v) {
        return ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(v).array();
    }

    /** Answers as bits, the first in the lowest. */
    private static byte[] bits(int[] values, int n) {
        byte[] packed = new byte[(n + 7) / 8];
        for (int i = 0; i < n; i++) {
            packed[i >> 3] |= (byte) (values[i] << (i & 7));
        }
        return packed;
    }

    static Type type(FindingRows.Type type) {
        return switch (type) {
            case TEXT -> Type.BYTE_ARRAY;
            case DAY -> Type.INT32;
            case NUMBER -> Type.DOUBLE;
            case ANSWER -> Type.BOOLEAN;
        };
    }

    static SchemaElement schema(FindingRows.Column c) {
        SchemaElement e = new SchemaElement(c.name());
        e.setType(type(c.type()));
        e.setRepetition_type(
                c.type() == FindingRows.Type.TEXT ? FieldRepetitionType.REQUIRED : FieldRepetitionType.OPTIONAL);
        if (c.type() == FindingRows.Type.TEXT) {
            e.setConverted_type(ConvertedType.UTF8);
            e.setLogicalType(LogicalType.STRING(new StringType()));
        } else if (c.type() == FindingRows.Type.DAY) {
            e.setConverted_type(ConvertedType.DATE);
            e.setLogicalType(LogicalType.DATE(new DateType()));
        }
        return e;
    }
}
