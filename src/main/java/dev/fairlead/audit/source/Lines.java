package dev.fairlead.audit.source;

import dev.fairlead.intake.text.CaseFormat;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.function.Consumer;

/**
 * Reads a file of one case a line (NDJSON), never holding more than one line; a line that is too long is passed over
 * and told.
 */
final class Lines {
    /** No case is longer; the case reader takes no more either. */
    static final int MOST_BYTES = 2_000_000;

    private static final int BUFFER = 1 << 16;

    private final String source;
    private final Consumer<Item> sink;
    private final long before;
    private byte[] line = new byte[BUFFER];
    private int length;
    private boolean tooLong;
    private long number;
    private long read;

    /** {@code before} is what was passed before this file, in bytes. */
    Lines(String source, long before, Consumer<Item> sink) {
        this.source = source;
        this.before = before;
        this.sink = sink;
    }

    void read(InputStream in) throws IOException {
        byte[] buffer = new byte[BUFFER];
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
            int start = 0;
            for (int i = 0; i < n; i++) {
                if (buffer[i] == '\n') {
                    take(buffer, start, i);
                    end();
                    start = i + 1;
                }
            }
            take(buffer, start, n);
        }
        if (length > 0 || tooLong) {
            end();
        }
    }

    private void take(byte[] buffer, int from, int to) {
        read += to - from;
        if (tooLong || length + to - from > MOST_BYTES) {
            tooLong = true;
            length = 0;
            return;
        }
        if (length + to - from > line.length) {
            line = Arrays.copyOf(line, Math.max(2 * line.length, length + to - from));
        }
        System.arraycopy(buffer, from, line, length, to - from);
        length += to - from;
    }

    private void end() {
        number++;
        read++;
        String where = source + ":" + number;
        if (tooLong) {
            sink.accept(new Item(
                    where,
                    new Item.Trouble("the line is longer than " + MOST_BYTES + " bytes, and no case is"),
                    before + read));
        } else if (!blank()) {
            sink.accept(new Item(where, new Item.Text(Arrays.copyOf(line, length), CaseFormat.JSON), before + read));
        }
        length = 0;
        tooLong = false;
    }

    private boolean blank() {
        for (int i = 0; i < length; i++) {
            // bytes of zero are no blanks: what a machine leaves that stopped while it wrote
            if (line[i] != ' ' && line[i] != '\t' && line[i] != '\r') {
                return false;
            }
        }
        return true;
    }
}
