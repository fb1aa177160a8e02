package dev.fairlead.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The two streams of the process, UTF-8 whatever the machine's default: results on one, everything else on the other.
 */
record Console(PrintStream out, PrintStream err) {
    /** Keeps why writing failed, which a print stream passes over; what comes after that goes nowhere. */
    private static final class Watched extends OutputStream {
        private final OutputStream to;
        private @Nullable IOException failed;

        Watched(OutputStream to) {
            this.to = to;
        }

        @Override
        public void write(int b) {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            if (failed == null) {
                try {
                    to.write(bytes, from, length);
                } catch (IOException e) {
                    failed = e;
                }
            }
        }
    }

    /** A stream of results whose failing is told by {@link #flush}. */
    private static final class Results extends PrintStream {
        private final Watched watched;

        Results(Watched watched) {
            super(watched, false, StandardCharsets.UTF_8);
            this.watched = watched;
        }
    }

    static Console ofProcess() {
        return new Console(
                new Results(new Watched(new FileOutputStream(FileDescriptor.out))),
                new PrintStream(new FileOutputStream(FileDescriptor.err), false, StandardCharsets.UTF_8));
    }

    /** Sends off what waits; throws when some of the results could not be written. */
    void flush() throws IOException {
        out.flush();
        err.flush();
        if (out instanceof Results results && results.watched.failed != null) {
            throw results.watched.failed;
        }
        if (out.checkError()) {
            throw new IOException("unknown reason");
        }
    }
}
