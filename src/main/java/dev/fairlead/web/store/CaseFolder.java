package dev.fairlead.web.store;

import dev.fairlead.intake.spelling.Visible;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder of case files. A save names the version that it was made from, and is refused when another version stands
 * there; the version that it replaces is kept. Saves are on the disk when they return. Safe between threads, and
 * between two servers on the same folder.
 */
@SuppressWarnings("try") // a turn is held, not used
public final class CaseFolder {
    /** A case with a hundred visits has about 60 000 bytes. */
    public static final int MOST_BYTES = 2_000_000;

    private static final String HISTORY = ".history";
    private static final String ARCHIVE = "archive";
    private static final String SERVED = "served-by.txt";

    private final Path folder;

    private CaseFolder(Path folder) {
        this.folder = folder;
    }

    /** Opens a folder, making it when it is not there. */
    public static CaseFolder open(Path folder) throws IOException {
        Files.createDirectories(folder);
        return new CaseFolder(folder.toRealPath());
    }

    /** The folder's own name, for headings; never its whole path. */
    public String label() {
        return folder.getFileName() == null
                ? folder.toString()
                : folder.getFileName().toString();
    }

    /** FileNames of all case files, sorted. */
    public List<String> names() {
        return names(folder);
    }

    /**
     * What is called like a case and is none that this folder keeps: links, which may lead anywhere, and what is no
     * file.
     */
    public List<String> passedOver() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(p -> !Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
                    .map(p -> p.getFileName().toString())
                    .filter(CaseFileNames::isCase)
                    .sorted()
                    .map(Visible::of)
                    .toList();
        } catch (IOException e) {
            throw failed("The folder of cases cannot be listed", e);
        }
    }

    private static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
                    .map(p -> p.getFileName().toString())
                    .filter(CaseFileNames::isCase)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw failed("The folder of cases cannot be listed", e);
        }
    }

    /** The bytes of a file as they are, whatever they are; empty when there is none. */
    public Optional<byte[]> bytes(String name) throws IOException {
        Optional<Path> file = CaseFileNames.existing(folder, name);
        return file.isEmpty() ? Optional.empty() : Optional.of(Files.readAllBytes(file.get()));
    }

    /** The file of that name; empty when there is none. */
    public Optional<Stored> read(String name) {
        try {
            Optional<Path> file = CaseFileNames.existing(folder, name);
            if (file.isEmpty()) {
                return Optional.empty();
            }
            if (Files.size(file.get()) > MOST_BYTES) {
                throw new StoreException(
                        name + " is larger than any case",
                        "Look at the file: it is hardly a case. Take it out of the folder.");
            }
            return Optional.of(Stored.of(name, Files.readAllBytes(file.get())));
        } catch (IOException e) {
            throw failed(name + " cannot be read", e);
        }
    }

    /**
     * Keeps a picture that was measured on in a folder beside the case, which no list, export or archive looks into;
     * gives its name there.
     */
    public String keepPicture(String name, String called, byte[] jpeg) {
        try (FolderLock turn = turn()) {
            Path beside = folder.resolve(name.replaceFirst("\\.[A-Za-z]+$", "") + ".pictures");
            Files.createDirectories(beside);
            int n = 1;
            while (Files.exists(beside.resolve(called + "-" + n + ".jpg"))) {
                n++;
            }
            Path file = beside.resolve(called + "-" + n + ".jpg");
            AtomicFile.write(file, jpeg, historyRoot());
            return folder.relativize(file).toString();
        } catch (IOException e) {
            throw failed("The picture cannot be kept", e);
        }
    }

    /** A mark that changes when the file of that name does; empty when there is none. */
    public Optional<String> stamp(String name) {
        try {
            Optional<Path> file = CaseFileNames.existing(folder, name);
            if (file.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(Files.size(file.get()) + " "
                    + Files.getLastModifiedTime(file.get()).to(java.util.concurrent.TimeUnit.NANOSECONDS));
        } catch (IOException e) {
            throw failed(name + " cannot be read", e);
        }
    }

    /**
     * Saves a new version made from {@code base}; throws {@link StaleException} when another version stands there by
     * now.
     */
    public Stored save(String name, String base, String text) {
        return replaced(
                name,
                base,
                (history, old) -> {
                    history.forgetUndone();
                    history.forgetSame(old);
                    history.keep(old);
                    return text.getBytes(StandardCharsets.UTF_8);
                },
                (history, old) -> {});
    }

    /** Goes back to the version before the present one; empty when there is none. */
    public Optional<Stored> undo(String name, String base) {
        return step(name, base, EarlierVersions::last, EarlierVersions::steppedBack);
    }

    /** Takes an undo back; empty when there is nothing to take back. */
    public Optional<Stored> redo(String name, String base) {
        return step(name, base, EarlierVersions::lastUndone, EarlierVersions::steppedForward);
    }

    private Optional<Stored> step(String name, String base, Finder finder, After after) {
        try {
            if (finder.find(history(name)).isEmpty()) {
                return Optional.empty();
            }
        } catch (IOException e) {
            throw failed("Earlier versions of " + name + " cannot be read", e);
        }
        return Optional.of(replaced(
                name,
                base,
                (history, old) -> {
                    history.forgetSame(old);
                    return finder.find(history).orElse(old);
                },
                after));
    }

    /** An earlier version by its hash; empty when it is not kept. */
    public Optional<Stored> version(String name, String version) {
        try {
            return history(name).find(version).map(b -> Stored.of(name, b));
        } catch (IOException e) {
            throw failed("Earlier versions of " + name + " cannot be read", e);
        }
    }

    /**
     * A version that another one replaced.
     *
     * @param until when it was replaced
     */
    public record Earlier(String version, Instant until) {}

    /** Versions that stood there before, the newest first. */
    public List<Earlier> earlier(String name) {
        try {
            return history(name).all();
        } catch (IOException e) {
            throw failed("Earlier versions of " + name + " cannot be read", e);
        }
    }

    /** When the file was last written; empty when there is none. */
    public Optional<Instant> saved(String name) {
        try {
            Optional<Path> file = CaseFileNames.existing(folder, name);
            return file.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Files.getLastModifiedTime(file.get()).toInstant());
        } catch (IOException e) {
            throw failed(name + " cannot be read", e);
        }
    }

    /** What was changed in a case by whom; changes by a text editor are in no log. */
    public ChangeLog log(String name) {
        return new ChangeLog(log(folder, name));
    }

    static Path log(Path folder, String name) {
        return folder.resolve(HISTORY).resolve(name).resolve("log.ndjson");
    }

    /** All that is kept beside the case files themselves: earlier versions, logs, and cases that were put away. */
    public Keepsakes keepsakes() {
        return new Keepsakes(folder, HISTORY, ARCHIVE);
    }

    /** Notes that this program serves the folder; throws when another machine does so already. */
    public ServedBy serve() throws IOException {
        try (FolderLock turn = turn()) {
            AtomicFile.clear(historyRoot());
        }
        return ServedBy.note(historyRoot().resolve(SERVED));
    }

    /** How many steps can be undone, and how many done again. */
    public int[] steps(String name) {
        try {
            return new int[] {history(name).size(), history(name).undoneSize()};
        } catch (IOException e) {
            throw failed("Earlier versions of " + name + " cannot be read", e);
        }
    }

    /** Makes a new file; throws when there is one of that name, however it is spelled. */
    public Stored create(String name, String text) {
        Path file = CaseFileNames.fresh(folder, name);
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try (FolderLock turn = turn()) {
            if (names().stream().anyMatch(n -> n.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))) {
                throw new StoreException("There is a case file called " + name + " already", "Choose another name.");
            }
            AtomicFile.write(file, bytes, historyRoot());
            return Stored.of(name, bytes);
        } catch (IOException e) {
            throw failed(name + " cannot be written", e);
        }
    }

    /** Names of cases that were put away. */
    public List<String> archived() {
        return Files.isDirectory(folder.resolve(ARCHIVE)) ? names(folder.resolve(ARCHIVE)) : List.of();
    }

    /** Puts a case away; it is kept in a folder of its own with all that belongs to it. */
    public void archive(String name) {
        move(folder, name, folder.resolve(ARCHIVE), name);
    }

    /** Takes a case out of the archive. */
    public void restore(String name) {
        move(folder.resolve(ARCHIVE), name, folder, name);
    }

    /** Gives a case file another name; its earlier versions and its log go along. */
    public void rename(String name, String fresh) {
        CaseFileNames.fresh(folder, fresh);
        move(folder, name, folder, fresh);
        Path old = folder.resolve(HISTORY).resolve(name);
        try (FolderLock turn = turn()) {
            if (Files.isDirectory(old)) {
                Files.move(old, folder.resolve(HISTORY).resolve(fresh));
            }
        } catch (IOException e) {
            throw failed("Earlier versions of " + name + " cannot be moved", e);
        }
    }

    private void move(Path from, String name, Path to, String fresh) {
        try (FolderLock turn = turn()) {
            Path file = CaseFileNames.existing(from, name)
                    .orElseThrow(() -> new StoreException(
                            name + " is no longer there", "Go to the list of cases to see which there are."));
            Files.createDirectories(to);
            if (names(to).stream().anyMatch(n -> n.equalsIgnoreCase(fresh) && !n.equals(name))
                    || !from.equals(to) && Files.exists(to.resolve(fresh))) {
                throw new StoreException("There is a case file called " + fresh + " already", "Choose another name.");
            }
            Files.move(file, to.resolve(fresh));
        } catch (IOException e) {
            throw failed(name + " cannot be moved", e);
        }
    }

    private Stored replaced(String name, String base, Content content, After after) {
        try (FolderLock turn = turn()) {
            Path file = CaseFileNames.existing(folder, name)
                    .orElseThrow(() -> new StoreException(
                            name + " is no longer in the folder",
                            "Somebody moved or removed the file. Put it back, or go to the list of cases."));
            byte[] old = Files.readAllBytes(file);
            if (!Stored.version(old).equals(base)) {
                throw new StaleException(name);
            }
            EarlierVersions history = history(name);
            byte[] bytes = content.of(history, old);
            if (!java.util.Arrays.equals(old, bytes)) {
                AtomicFile.write(file, bytes, historyRoot());
                after.done(history, old);
            }
            return Stored.of(name, bytes);
        } catch (IOException e) {
            throw failed(name + " cannot be saved", e);
        }
    }

    private EarlierVersions history(String name) {
        return new EarlierVersions(folder.resolve(HISTORY), name);
    }

    private Path historyRoot() throws IOException {
        return Files.createDirectories(folder.resolve(HISTORY));
    }

    private FolderLock turn() throws IOException {
        FolderLock turn = FolderLock.take(historyRoot().resolve("lock"));
        try {
            ServedBy.refuseOther(historyRoot().resolve(SERVED));
            return turn;
        } catch (IOException | RuntimeException e) {
            turn.close();
            throw e;
        }
    }

    private static StoreException failed(String what, IOException e) {
        return new StoreException(
                what, "Look whether the folder can be written to and the disk has room, then try again.", e);
    }

    private interface Finder {
        Optional<byte[]> find(EarlierVersions history) throws IOException;
    }

    private interface Content {
        byte[] of(EarlierVersions history, byte[] old) throws IOException;
    }

    private interface After {
        void done(EarlierVersions history, byte[] old) throws IOException;
    }
}
