package dev.fairlead.cli;

import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.web.store.FileRights;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * Writes a file whole or not at all: one that is there stays as it is until the new one is complete, which then has its
 * rights. A device or pipe, which cannot be replaced, is written to as it is.
 */
final class WholeFile {
    private static final String PART = ".part";
    /** A name of a file can have 255 bytes; a letter takes up to four. */
    private static final int LONGEST_NAME = 40;

    private static final Duration YOUNG = Duration.ofMinutes(10);

    private WholeFile() {}

    static void write(Path file, byte[] bytes) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    shown(file)
                            + (folder == null
                                    ? " is no file."
                                    : ": the folder " + shown(folder.getFileName()) + " is not there; make it first."));
        }
        try {
            Path draft = draft(file);
            try {
                Files.write(draft, bytes);
                put(draft, file);
            } finally {
                Files.deleteIfExists(draft);
            }
        } catch (IOException e) {
            throw new Main.Stop(ExitCode.USAGE, shown(file) + ": cannot be written (" + why(e) + ").");
        }
    }

    /**
     * A name of its own for what will become {@code file}: beside it, so that it can take its place at once. It goes
     * with the program, whatever ends that; what a run that was killed left there is cleared away.
     */
    static Path draft(Path file) throws IOException {
        Path draft;
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            draft = Files.createTempFile("fairlead", PART);
        } else {
            Path real = real(file);
            String name = real.getFileName().toString();
            String start = "." + name.substring(0, Math.min(LONGEST_NAME, name.length())) + ".";
            Path folder = Objects.requireNonNull(real.getParent());
            if (Files.isReadable(folder)) {
                try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, f -> left(f, start))) {
                    for (Path l : left) {
                        Files.deleteIfExists(l);
                    }
                }
            }
            draft = folder.resolve(start + ProcessHandle.current().pid() + "-" + System.nanoTime() + PART);
        }
        draft.toFile().deleteOnExit();
        return draft;
    }

    /** True for a draft whose program is gone; a young one may be that of another machine that shares the folder. */
    private static boolean left(Path file, String start) throws IOException {
        String name = file.getFileName().toString();
        if (!name.startsWith(start) || !name.endsWith(PART)) {
            return false;
        }
        String pid = name.substring(start.length()).split("-", 2)[0];
        return pid.matches("\\d{1,9}")
                && ProcessHandle.of(Long.parseLong(pid)).isEmpty()
                && Files.getLastModifiedTime(file)
                        .toInstant()
                        .isBefore(Instant.now().minus(YOUNG));
    }

    /**
     * Puts a draft that is whole where {@code file} stands; a device or pipe is written to, and of a link what it leads
     * to is replaced.
     */
    static void put(Path draft, Path file) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            try (OutputStream out = Files.newOutputStream(file)) {
                Files.copy(draft, out);
            }
        } else {
            Path real = real(file);
            FileRights.keep(real, draft);
            Files.move(draft, real, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static Path real(Path file) throws IOException {
        return Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    }

    /** A file's name as it can be printed. */
    static String shown(Path file) {
        return Visible.of(file.toString());
    }

    /** Why a file could not be read or written, in a few words. */
    static String why(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "not permitted";
        }
        String said = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        return said == null ? e.getClass().getSimpleName() : Visible.of(said);
    }
}
