package dev.fairlead.web.store;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
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
    private static final String OWN = machine();

    private final Path note;
    private final ScheduledExecutorService beat = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "note of serving");
        thread.setDaemon(true);
        return thread;
    });

    @SuppressWarnings("FutureReturnValueIgnored") // what goes wrong is told where it does
    private ServedBy(Path note) {
        this.note = note;
        beat.scheduleAtFixedRate(this::touch, BEAT_SECONDS, BEAT_SECONDS, TimeUnit.SECONDS);
    }

    static ServedBy note(Path note) throws IOException {
        refuseOther(note);
        Files.writeString(note, OWN + "\n");
        return new ServedBy(note);
    }

    /**
     * Throws when another machine serves the folder. Asked before every change too: a machine that slept may find on
     * waking that another has taken its place.
     */
    static void refuseOther(Path note) throws IOException {
        Optional<String> other = other(note);
        if (other.isPresent()) {
            throw new StoreException(
                    "This folder is being served by another machine, " + other.get(),
                    "Two machines that write in one folder could overwrite each other. Stop the other server, wait "
                            + FRESH.toMinutes() + " minutes, and start again.");
        }
    }

    private static Optional<String> other(Path note) throws IOException {
        try {
            String other = Files.readString(note).strip();
            Instant last = Files.getLastModifiedTime(note).toInstant();
            return other.equals(OWN) || last.isBefore(Instant.now().minus(FRESH))
                    ? Optional.empty()
                    : Optional.of(other.replaceAll(" .*", ""));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** Keeps the note fresh, unless another machine has taken the place. */
    public void touch() {
        try {
            if (other(note).isEmpty()) {
                Files.writeString(note, OWN + "\n");
            }
        } catch (IOException | RuntimeException e) {
            LOG.log(
                    Level.WARNING,
                    "the note that this machine serves the folder cannot be kept fresh: {0}",
                    e.getClass());
        }
    }

    /** The machine's name, and what tells it from another of the same name. */
    private static String machine() {
        String name;
        try {
            name = InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            // a name that no network knows is a name still: the message begins with it
            name = String.valueOf(e.getMessage()).replaceAll("[:\\s].*", "");
        }
        try {
            int cards = NetworkInterface.networkInterfaces()
                    .map(ServedBy::address)
                    .sorted()
                    .toList()
                    .hashCode();
            return name + " " + Integer.toHexString(cards);
        } catch (SocketException e) {
            return name;
        }
    }

    private static String address(NetworkInterface card) {
        try {
            return Arrays.toString(card.getHardwareAddress());
        } catch (SocketException e) {
            return "";
        }
    }

    @Override
    public void close() {
        beat.shutdownNow();
        try {
            if (other(note).isEmpty()) {
                Files.deleteIfExists(note);
            }
        } catch (IOException e) {
            LOG.log(Level.WARNING, "the note that this machine serves the folder stays: {0}", e.getClass());
        }
    }
}
