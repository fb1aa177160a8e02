package dev.fairlead.audit.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against the text of the Apache Parquet format, "Data Pages, Encodings", RLE / Bit-Packing Hybrid. */
class HybridEncoderTest {
    /** The format's example: the numbers 0 to 7 with three bits are 10001000 11000110 11111010 in packed order. */
    @Test
    void packsTheFormatsExample() {
        assertThat(HybridEncoder.of(new int[] {0, 1, 2, 3, 4, 5, 6, 7}, 8, 3))
                .containsExactly(0x03, 0b10001000, 0b11000110, 0b11111010);
    }

    @Test
    void longRunsTakeAFewBytes() {
        assertThat(HybridEncoder.of(new int[1000], 1000, 1)).containsExactly(0xD0, 0x0F, 0);
        assertThat(HybridEncoder.of(new int[0], 0, 1)).isEmpty();
    }

    @Test
    void whatIsWrittenIsReadBack() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 300; round++) {
            int bits = random.nextInt(0, 18);
            int n = random.nextInt(1, 400);
            int[] values = new int[n];
            for (int i = 0; i < n; ) {
                int value = bits == 0 ? 0 : random.nextInt(1 << bits);
                for (int run = random.nextInt(1, random.nextBoolean() ? 3 : 40); run > 0 && i < n; run--) {
                    values[i++] = value;
                }
            }
            assertThat(decode(HybridEncoder.of(values, n, bits), bits, n))
                    .as("round " + round)
                    .isEqualTo(values);
        }
    }

    static int[] decode(byte[] bytes, int bits, int n) {
        int[] out = new int[n];
        int have = 0;
        int at = 0;
        while (have < n) {
            long header = 0;
            int shift = 0;
            do {
                header |= (long) (bytes[at] & 0x7F) << shift;
                shift += 7;
            } while ((bytes[at++] & 0x80) != 0);
            if ((header & 1) == 0) {
                int value = 0;
                for (int b = 0; b < (bits + 7) / 8; b++) {
                    value |= (bytes[at++] & 0xFF) << 8 * b;
                }
                for (long i = 0; i < header >>> 1; i++) {
                    out[have++] = value;
                }
            } else {
                int count = (int) (header >>> 1) * 8;
                for (int i = 0; i < count; i++) {
                    int value = 0;
                    for (int b = 0; b < bits; b++) {
                        int bit = i * bits + b;
                        value |= (bytes[at + bit / 8] >>> bit % 8 & 1) << b;
                    }
                    if (have < n) {
                        out[have++] = value;
                    }
                }
                at += count * bits / 8;
            }
        }
        assertThat(at).isEqualTo(bytes.length);
        return out;
    }
}
