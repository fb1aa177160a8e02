package dev.fairlead.web.store;

import dev.fairlead.web.store.CaseFolder.Earlier;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Earlier versions of one case file, in a folder of its own below {@code .history}. Files are numbered in the order in
 * which they were replaced. The first is never removed, so that what came in, with its comments, stays; of the others
 * the last {@link #KEPT} are kept.
 */
final class EarlierVersions {
    static final int KEPT = 100;
    private static final String FORM = "%07d-%s.txt";

    private final Path folder;
    private final Path undone;

    EarlierVersions(Path root, String name) {
        folder = root.resolve(name);
        undone = folder.resolve("undone");
    }

    /** Keeps a version that is about to be replaced. */
    void keep(byte[] bytes) throws IOException {
        add(folder, bytes);
        List<Path> all = entries(folder);
        // from the second on: the first is the original
        for (int i = 1; i < all.size() - KEPT; i++) {
            Files.deleteIfExists(all.get(i));
        }
    }

    /** Takes the present version off the pile: a program that was stopped in the middle of a save leaves it there. */
    void forgetSame(byte[] present) throws IOException {
        List<Path> all = entries(folder);
        for (int i = all.size() - 1; i >= 0 && is(all.get(i), Stored.version(present)); i--) {
            Files.deleteIfExists(all.get(i));
        }
    }

    private static boolean is(Path entry, String version) {
        return entry.getFileName().toString().endsWith("-" + version + ".txt");
    }

    /** The version before the present one. */
    Optional<byte[]> last() throws IOException {
        List<Path> all = entries(folder);
        return all.isEmpty() ? Optional.empty() : Optional.of(Files.readAllBytes(all.get(all.size() - 1)));
    }

    /** The version that was undone last. */
    Optional<byte[]> lastUndone() throws IOException {
        List<Path> all = entries(undone);
        return all.isEmpty() ? Optional.empty() : Optional.of(Files.readAllBytes(all.get(all.size() - 1)));
    }

    /** Files the present version as undone and takes the last one off the pile. */
    void steppedBack(byte[] present) throws IOException {
        add(undone, present);
        drop(folder);
    }

    /** Files the present version as earlier and takes the last undone one off its pile. */
    void steppedForward(byte[] present) throws IOException {
        add(folder, present);
        drop(undone);
    }

    /** A change other than undo ends what could be done again. */
    void forgetUndone() throws IOException {
        for (Path p : entries(undone)) {
            Files.deleteIfExists(p);
        }
    }

    /** The version with that hash, wherever it is kept. */
    Optional<byte[]> find(String version) throws IOException {
        for (Path where : List.of(folder, undone)) {
            for (Path p : entries(where)) {
                if (is(p, version)) {
                    return Optional.of(Files.readAllBytes(p));
                }
            }
        }
        return Optional.empty();
    }

    /** All earlier versions that can be gone back to, the newest first. */
    List<Earlier> all() throws IOException {
        List<Earlier> all = new ArrayList<>();
        for (Path p : entries(folder)) {
            String name = p.getFileName().toString();
            all.add(
                    0,
                    new Earlier(
                            name.substring(8, name.length() - 4),
                            Files.getLastModifiedTime(p).toInstant()));
        }
        return all;
    }

    int size() throws IOException {
        return entries(folder).size();
    }

    int undoneSize() throws IOException {
        return entries(undone).size();
    }

    private static void add(Path where, byte[] bytes) throws IOException {
        Files.createDirectories(where);
        List<Path> all = entries(where);
        int next = all.isEmpty() ? 1 : number(all.get(all.size() - 1)) + 1;
        AtomicFile.write(where.resolve(FORM.formatted(next, Stored.version(bytes))), bytes, where);
    }

    private static void drop(Path where) throws IOException {
        List<Path> all = entries(where);
        if (!all.isEmpty()) {
            Files.deleteIfExists(all.get(all.size() - 1));
        }
    }

    private static int number(Path p) {
        return Integer.parseInt(p.getFileName().toString().substring(0, 7));
    }

    private static List<Path> entries(Path where) throws IOException {
        if (!Files.isDirectory(where)) {
            return List.of();
        }
        List<Path> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(where)) {
            files.filter(p -> p.getFileName().toString().matches("[0-9]{7}-[0-9a-f]+\\.txt"))
                    .sorted()
                    .forEach(all::add);
        }
        return all;
    }
}
