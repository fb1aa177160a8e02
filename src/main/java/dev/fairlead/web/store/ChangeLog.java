package dev.fairlead.web.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Who changed what in one case, and when: lines that are only ever added. */
public final class ChangeLog {
    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * One change.
     *
     * @param when to the second, in local time
     * @param who as typed
     * @param field pointer of the fact
     * @param old what stood there as typed; empty for nothing
     * @param now what stands there since; empty for nothing
     * @param why what was done when it was more than a value typed; empty for that
     */
    public record Entry(String when, String who, String field, String old, String now, String why) {}

    private final Path file;

    ChangeLog(Path file) {
        this.file = file;
    }

    /** The log of a case file that lies in a folder as it is served. */
    public static ChangeLog beside(Path file) {
        return new ChangeLog(CaseFolder.log(
                Objects.requireNonNull(file.toAbsolutePath().getParent()),
                file.getFileName().toString()));
    }

    /** Adds entries; when this returns they are on the disk. */
    public void add(List<Entry> entries) {
        StringBuilder lines = new StringBuilder();
        try {
            for (Entry e : entries) {
                lines.append(JSON.writeValueAsString(e)).append('\n');
            }
            Files.createDirectories(file.getParent());
            try (FileChannel out = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
                ByteBuffer all = ByteBuffer.wrap(lines.toString().getBytes(StandardCharsets.UTF_8));
                while (all.hasRemaining()) {
                    out.write(all);
                }
                out.force(false);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the log of the case cannot be written", e);
        }
    }

    /** All entries, the newest first. */
    public List<Entry> all() {
        List<Entry> all = new ArrayList<>();
        if (Files.exists(file)) {
            try {
                for (String line : Files.readAllLines(file)) {
                    read(line, all);
                }
            } catch (IOException e) {
                throw new UncheckedIOException("the log of the case cannot be read", e);
            }
        }
        return all;
    }

    private static void read(String line, List<Entry> to) {
        try {
            to.add(0, JSON.readValue(line, Entry.class));
        } catch (JsonProcessingException e) {
            // a program that was killed while it wrote leaves half a line; it is shown as what it is
            to.add(0, new Entry("", "", "", "", "", "a line that was cut off"));
        }
    }
}
