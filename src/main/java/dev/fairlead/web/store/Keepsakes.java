package dev.fairlead.web.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a folder keeps beside its case files: earlier versions, logs of changes and cases that were put away, each named
 * by its path in the folder, with slashes; so that a backup holds all of it and brings it back.
 */
public final class Keepsakes {
    private static final String VERSION = "(?:undone/)?[0-9]{7}-(?<hash>[0-9a-f]{20})\\.txt";

    private final Path folder;
    private final List<Path> places;
    private final Pattern kept;
    private final Pattern away;

    Keepsakes(Path folder, String history, String archive) {
        this.folder = folder;
        places = List.of(folder.resolve(archive), folder.resolve(history));
        kept = Pattern.compile(Pattern.quote(history) + "/(?<name>[^/]+)/(?:" + VERSION + "|log\\.ndjson)");
        away = Pattern.compile(Pattern.quote(archive) + "/(?<name>[^/]+)");
    }

    /** Paths of all of it: cases that were put away first, then what belongs to any case. */
    public List<String> all() {
        List<String> all = new ArrayList<>();
        try {
            for (Path place : places) {
                if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
                    try (Stream<Path> files = Files.walk(place)) {
                        files.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
                                .map(p -> folder.relativize(p).toString().replace('\\', '/'))
                                .filter(p -> name(p).isPresent())
                                .sorted()
                                .forEach(all::add);
                    }
                }
            }
            return all;
        } catch (IOException e) {
            throw new StoreException(
                    "Earlier versions cannot be listed", "Look whether the folder can be read, then try again.", e);
        }
    }

    /** The case file that something kept belongs to; empty for a path that names nothing of the kind. */
    public Optional<String> name(String path) {
        for (Pattern p : List.of(kept, away)) {
            Matcher m = p.matcher(path);
            if (m.matches()
                    && CaseFileNames.isCase(m.group("name"))
                    && !m.group("name").contains("..")) {
                return Optional.of(m.group("name"));
            }
        }
        return Optional.empty();
    }

    /** True for a case that was put away, false for a version or a log. */
    public boolean putAway(String path) {
        return away.matcher(path).matches();
    }

    /** The bytes at a path. */
    public byte[] read(String path) throws IOException {
        return Files.readAllBytes(place(path));
    }

    /**
     * Puts something back where it was kept; tells false, and leaves what stands there, when the place is taken or the
     * bytes are not those that the path names by their hash.
     */
    public boolean putBack(String path, byte[] bytes) throws IOException {
        Path place = place(path);
        Matcher m = kept.matcher(path);
        boolean other =
                m.matches() && m.group("hash") != null && !m.group("hash").equals(Stored.version(bytes));
        if (other || Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        Path within = Objects.requireNonNull(place.getParent());
        Files.createDirectories(within);
        AtomicFile.write(place, bytes, within);
        return true;
    }

    private Path place(String path) {
        if (name(path).isEmpty()) {
            throw new IllegalArgumentException("nothing is kept at such a path");
        }
        return folder.resolve(path);
    }
}
