package dev.fairlead.web.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file so that, whenever the machine or the program stops, either the old or the new content stands there
 * whole.
 */
final class AtomicFile {
    private AtomicFile() {}

    /** Replaces the content of {@code file}; when this returns, it is on the disk. */
    static void write(Path file, byte[] bytes, Path scratch) throws IOException {
        Path temp = Files.createTempFile(scratch, "saving-", ".part");
        try {
            try (FileChannel out =
                    FileChannel.open(temp, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
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
        forceFolder(file.getParent());
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
