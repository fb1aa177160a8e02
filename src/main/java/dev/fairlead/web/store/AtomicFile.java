package dev.fairlead.web.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.UUID;

/**
 * Writes a file so that, whenever the machine or the program stops, either the old or the new content stands there
 * whole.
 */
final class AtomicFile {
    private static final String DRAFT = "saving-";
    private static final String PART = ".part";

    private AtomicFile() {}

    /** Clears away what saves that were killed left in {@code scratch}; only while nobody else saves. */
    static void clear(Path scratch) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(scratch, DRAFT + "*" + PART)) {
            for (Path l : left) {
                Files.deleteIfExists(l);
            }
        }
    }

    /** Replaces the content of {@code file}; when this returns, it is on the disk. */
    static void write(Path file, byte[] bytes, Path scratch) throws IOException {
        Path temp = scratch.resolve(DRAFT + UUID.randomUUID() + PART);
        try {
            try (FileChannel out = FileChannel.open(temp, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
                FileRights.keep(file, temp);
                ByteBuffer all = ByteBuffer.wrap(bytes);
                while (all.hasRemaining()) {
                    out.write(all);
                }
                out.force(true);
            }
            Files.move(temp, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(temp);
        }
        forceFolder(Objects.requireNonNull(file.getParent()));
    }

    /**
     * The new name itself lasts only when the folder is on the disk too; Windows has no way to ask for that, and needs
     * none.
     */
    private static void forceFolder(Path folder) throws IOException {
        if (java.io.File.separatorChar == '/') {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
