package dev.fairlead.cli;

import dev.fairlead.intake.spelling.Visible;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * Writes a file whole or not at all: one that is there stays as it is until the new one is complete, which then has its
 * rights. A device or pipe, which cannot be replaced, is written to as it is.
 */
final class WholeFile {
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
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                try (OutputStream out = Files.newOutputStream(file)) {
                    out.write(bytes);
                }
            } else {
                // a link stays one: what it leads to is replaced
                replace(Files.exists(file) ? file.toRealPath() : file.toAbsolutePath(), bytes);
            }
        } catch (IOException e) {
            throw new Main.Stop(ExitCode.USAGE, shown(file) + ": cannot be written (" + why(e) + ").");
        }
    }

    private static void replace(Path file, byte[] bytes) throws IOException {
        Path draft = file.resolveSibling("." + file.getFileName() + "." + System.nanoTime() + ".part");
        try {
            Files.write(draft, bytes, StandardOpenOption.CREATE_NEW);
            keepRights(file, draft);
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    /** Gives a file that will replace another one the rights of that one; a new file has those that are usual. */
    static void keepRights(Path replaced, Path by) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(replaced, PosixFileAttributeView.class);
        if (old != null && Files.exists(replaced)) {
            if (!Files.isWritable(replaced)) {
                throw new AccessDeniedException(replaced.toString());
            }
            Files.setPosixFilePermissions(by, old.readAttributes().permissions());
        }
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
