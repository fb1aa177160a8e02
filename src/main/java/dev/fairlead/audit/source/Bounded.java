package dev.fairlead.audit.source;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongConsumer;

/** A stream that refuses to give more bytes than a budget: what a small archive may unpack to. */
final class Bounded extends FilterInputStream {
    /** The budget was used up. */
    static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;

        TooMuch(String message) {
            super(message);
        }
    }

    private final String complaint;
    private final LongConsumer taken;
    private long left;

    Bounded(InputStream in, long budget, String complaint) {
        this(in, budget, complaint, n -> {});
    }

    /** {@code taken} is told of all bytes that are given. */
    Bounded(InputStream in, long budget, String complaint, LongConsumer taken) {
        super(in);
        this.taken = taken;
        this.left = budget;
        this.complaint = complaint;
    }

    @Override
    public int read() throws IOException {
        int b = super.read();
        took(b < 0 ? 0 : 1);
        return b;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int n = super.read(into, from, length);
        took(Math.max(0, n));
        return n;
    }

    @Override
    public long skip(long n) throws IOException {
        long skipped = super.skip(n);
        took(skipped);
        return skipped;
    }

    private void took(long n) throws TooMuch {
        left -= n;
        taken.accept(n);
        if (left < 0) {
            throw new TooMuch(complaint);
        }
    }
}
