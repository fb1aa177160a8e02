package dev.fairlead.audit.write;

import java.io.ByteArrayOutputStream;

/** Whole numbers of few bits as runs and packed groups of eight (Apache Parquet format, "RLE / Bit-Packing Hybrid"). */
final class HybridEncoder {
    private static final int GROUP = 8;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final int bits;

    private HybridEncoder(int bits) {
        this.bits = bits;
    }

    /** The first {@code n} values with {@code bits} each. */
    static byte[] of(int[] values, int n, int bits) {
        HybridEncoder e = new HybridEncoder(bits);
        int packedFrom = 0;
        int i = 0;
        while (i < n) {
            int run = 1;
            while (i + run < n && values[i + run] == values[i]) {
                run++;
            }
            // a run may begin only where a group of packed values ends
            int lead = (GROUP - (i - packedFrom) % GROUP) % GROUP;
            if (run >= lead + GROUP) {
                e.packed(values, packedFrom, i + lead);
                e.run(values[i], run - lead);
                i += run;
                packedFrom = i;
            } else {
                i += run;
            }
        }
        e.packed(values, packedFrom, n);
        return e.out.toByteArray();
    }

    private void run(int value, int length) {
        varint((long) length << 1);
        for (int b = 0; b < (bits + 7) / 8; b++) {
            out.write(value >>> 8 * b);
        }
    }

    private void packed(int[] values, int from, int to) {
        if (from == to) {
            return;
        }
        int groups = (to - from + GROUP - 1) / GROUP;
        varint((long) groups << 1 | 1);
        long pending = 0;
        int have = 0;
        for (int i = from; i < from + groups * GROUP; i++) {
            pending |= (i < to ? (long) values[i] : 0) << have;
            have += bits;
            while (have >= 8) {
                out.write((int) pending);
                pending >>>= 8;
                have -= 8;
            }
        }
    }

    private void varint(long value) {
        long v = value;
        while ((v & ~0x7FL) != 0) {
            out.write((int) (v & 0x7F | 0x80));
            v >>>= 7;
        }
        out.write((int) v);
    }
}
