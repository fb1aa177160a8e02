package dev.fairlead.web.store;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The note of which machine serves a folder. Locks keep two programs of one machine apart; over a file share they need
 * not, so a second machine is refused for as long as the first one's note is fresh.
 */
public final class ServedBy implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger("dev.fairlead.web");
    static final Duration FRESH = Duration.ofMinutes(3);
    private static final int BEAT_SECONDS = 45;

    private final Path note;
    private final ScheduledExecutorService beat = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "note of serving");
        thread.setDaemon(true);
        return thread;
    });

    private ServedBy(Path note) {
        this.note = note;
        beat.scheduleAtFixedRate(this::touch, BEAT_SECONDS, BEAT_SECONDS, TimeUnit.SECONDS);
    }

    static ServedBy note(Path note) throws IOException {
        String own = machine();
        if (Files.exists(note)) {
            String other = Files.readString(note).strip();
            Instant last = Files.getLastModifiedTime(note).toInstant();
            if (!other.equals(own) && last.isAfter(Instant.now().minus(FRESH))) {
                throw new StoreException(
                        "This folder is being served by another machine, " + other,
                        "Two machines that write in one folder could overwrite each other. Stop the other server, wait "
                                + FRESH.toMinutes() + " minutes, and start again.");
            }
        }
        Files.writeString(note, own + "\n");
        return new ServedBy(note);
    }

    private void touch() {
        try {
            Files.writeString(note, machine() + "\n");
        } catch (IOException e) {
            LOG.log(
                    Level.WARNING,
                    "the note that this machine serves the folder cannot be kept fresh: {0}",
                    e.getClass());
        }
    }

    private static String machine() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            return "a machine without a name";
        }
    }

    @Override
    public void close() {
        beat.shutdownNow();
        try {
            Files.deleteIfExists(note);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "the note that this machine serves the folder stays: {0}", e.getClass());
        }
    }
}
