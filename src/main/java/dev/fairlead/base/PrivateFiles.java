package dev.fairlead.base;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files that nobody but the user may read; where a file system knows no such rights, its own ones hold. */
public final class PrivateFiles {
    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rwx------");

    private PrivateFiles() {}

    /** The user's folder for what can be made anew, as the platform has it. */
    public static Path cache() {
        return ofUser(".cache", "XDG_CACHE_HOME", "LOCALAPPDATA");
    }

    /** The user's folder for what has to be kept between starts. */
    public static Path settings() {
        return ofUser(".config", "XDG_CONFIG_HOME");
    }

    private static Path ofUser(String otherwise, String... variables) {
        for (String variable : variables) {
            String set = System.getenv(variable);
            if (set != null && !set.isEmpty()) {
                return Path.of(set, "fairlead");
            }
        }
        return Path.of(System.getProperty("user.home"), otherwise, "fairlead");
    }

    /** Makes a folder and those above it, for the user alone. */
    public static void folder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(
                    folder,
                    posix(folder)
                            ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
                            : new FileAttribute<?>[0]);
        }
    }

    /** False for a folder that somebody else could write to, or has made. */
    public static boolean alone(Path folder) throws IOException {
        return !posix(folder)
                || Files.getPosixFilePermissions(folder).equals(OWNER_ONLY)
                        && Files.getOwner(folder).getName().equals(System.getProperty("user.name"));
    }

    /** Writes a file for the user alone: whoever reads meanwhile finds the older one, or this one whole. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path part = Files.createTempFile(file.toAbsolutePath().getParent(), "part", ".tmp");
        try {
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static boolean posix(Path at) {
        return at.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
