package dev.fairlead.rules;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the engine decided about one criterion in the build: the ruling for each combination of answers, so that it need
 * not be asked again.
 */
final class Decided {
    /** A ruling is numbered by one byte. */
    private static final int MOST_RULINGS = 127;

    private final long[] answers;
    private final byte[] which;
    private final Ruling[] rulings;

    private Decided(long[] answers, byte[] which, Ruling[] rulings) {
        this.answers = answers;
        this.which = which;
        this.rulings = rulings;
    }

    /** The ruling for these answers; null when the build did not meet them. */
    Ruling of(long asked) {
        int at = Arrays.binarySearch(answers, asked);
        return at < 0 ? null : rulings[which[at]];
    }

    /** As bytes. */
    static byte[] bytes(Map<Long, Ruling> kept) throws IOException {
        TreeMap<Long, byte[]> sorted = new TreeMap<>();
        for (Map.Entry<Long, Ruling> one : kept.entrySet()) {
            sorted.put(one.getKey(), one.getValue().bytes());
        }
        List<ByteBuffer> different = new ArrayList<>(
                sorted.values().stream().map(ByteBuffer::wrap).distinct().toList());
        if (different.size() > MOST_RULINGS) {
            throw new IllegalStateException("more ways to end a criterion than can be numbered");
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(all);
        out.writeInt(sorted.size());
        for (long bits : sorted.keySet()) {
            out.writeLong(bits);
        }
        for (byte[] ruling : sorted.values()) {
            out.writeByte(different.indexOf(ByteBuffer.wrap(ruling)));
        }
        out.writeByte(different.size());
        for (ByteBuffer ruling : different) {
            out.write(ruling.array());
        }
        return all.toByteArray();
    }

    /** What {@link #bytes} wrote, under the thresholds now in force. */
    static Decided read(DataInputStream in, Criterion criterion, Limits limits) throws IOException {
        long[] answers = new long[in.readInt()];
        ByteBuffer.wrap(in.readNBytes(answers.length * Long.BYTES))
                .asLongBuffer()
                .get(answers);
        byte[] which = in.readNBytes(answers.length);
        Ruling[] rulings = new Ruling[in.readByte()];
        for (int i = 0; i < rulings.length; i++) {
            rulings[i] = Ruling.read(in, criterion, limits);
        }
        return new Decided(answers, which, rulings);
    }
}
