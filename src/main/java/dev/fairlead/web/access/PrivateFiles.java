package dev.fairlead.web.access;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Files that nobody but the user may read; where a file system knows no such rights, its own ones hold. */
final class PrivateFiles {
    private PrivateFiles() {}

    /** Makes a folder and those above it, for the user alone. */
    static void folder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, rights(folder.toAbsolutePath(), "rwx------"));
        }
    }

    /** An empty file for the user alone, in the place of an older one. */
    static Path fresh(Path file) throws IOException {
        Files.deleteIfExists(file);
        return Files.createFile(file, rights(file.toAbsolutePath(), "rw-------"));
    }

    private static FileAttribute<?>[] rights(Path at, String rights) {
        return at.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }
}
