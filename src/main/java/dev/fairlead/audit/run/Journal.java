package dev.fairlead.audit.run;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * The rows of an audit as they were made, so that one that was cut off can be taken up again. Rows are taken from it
 * only as long as source and content of the cases are what they were; from the first that differs on, everything is
 * judged anew.
 */
final class Journal implements Closeable {
    /** What every journal begins with. */
    static final String MARK = "fairlead audit ";

    private final FileChannel file;
    private final RowJson json;
    private final @Nullable BufferedReader old;
    private boolean reading;
    private long kept;
    private boolean appending;

    private Journal(FileChannel file, RowJson json, @Nullable BufferedReader old, long kept, boolean reading) {
        this.file = file;
        this.json = json;
        this.old = old;
        this.kept = kept;
        this.reading = reading;
    }

    /** A row of the journal, with its bytes there. */
    record Old(CaseRow row, int length) {}

    /** Opens it; rows of an audit with another {@code key} (rulebase, day, stage) are thrown away. */
    static Journal open(Path path, RowJson json, String key) throws IOException {
        String first = key + "\n";
        boolean same = false;
        BufferedReader old = null;
        if (Files.exists(path)) {
            old = new BufferedReader(new InputStreamReader(
                    Channels.newInputStream(FileChannel.open(path, StandardOpenOption.READ)), StandardCharsets.UTF_8));
            String began = old.readLine();
            same = key.equals(began);
            // one that was cut off in its first line is a journal too
            if (began != null && !began.startsWith(MARK) && !MARK.startsWith(began)) {
                old.close();
                throw new FileAlreadyExistsException(
                        path.toString(), null, "no journal of an audit; move it away, or name another output");
            }
        }
        FileChannel file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (!same) {
            file.truncate(0);
            file.write(ByteBuffer.wrap(first.getBytes(StandardCharsets.UTF_8)));
        }
        return new Journal(file, json, old, first.getBytes(StandardCharsets.UTF_8).length, same);
    }

    /** The next old row, when it is that of this source; asked once for each item in order, from one thread. */
    @Nullable
    Old next(String source) {
        if (!reading || old == null) {
            return null;
        }
        try {
            String line = old.readLine();
            CaseRow row = line == null || !line.endsWith("}") ? null : json.parse(line);
            if (row != null && row.source().equals(source)) {
                return new Old(row, line.getBytes(StandardCharsets.UTF_8).length + 1);
            }
        } catch (IOException | RuntimeException e) {
            // a line that was cut off, or written by something else: judged anew from here on
        }
        reading = false;
        return null;
    }

    /** Keeps a row, in order; {@code old} is what it was taken from, or null when it was judged now. */
    void keep(CaseRow row, @Nullable Old was) throws IOException {
        if (was != null && !appending) {
            kept += was.length();
            return;
        }
        if (!appending) {
            file.truncate(kept);
            file.position(kept);
            appending = true;
        }
        file.write(ByteBuffer.wrap(json.line(row).getBytes(StandardCharsets.UTF_8)));
    }

    @Override
    public void close() throws IOException {
        file.close();
        if (old != null) {
            old.close();
        }
    }
}
