package dev.fairlead.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * The two streams of the process, UTF-8 whatever the machine's default: results on one, everything else on the other.
 */
record Console(PrintStream out, PrintStream err) {
    static Console ofProcess() {
        return new Console(stream(FileDescriptor.out), stream(FileDescriptor.err));
    }

    private static PrintStream stream(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }

    void flush() throws IOException {
        out.flush();
        err.flush();
        if (out.checkError()) {
            throw new IOException("the output could not be written");
        }
    }
}
