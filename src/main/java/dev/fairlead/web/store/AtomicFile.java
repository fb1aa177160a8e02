package dev.fairlead.web.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;

/**
 * Writes a file so that, whenever the machine or the program stops, either the old or the new content stands there
 * whole.
 */
final class AtomicFile {
    private AtomicFile() {}

    /** Replaces the content of {@code file}; when this returns, it is on the disk. */
    static void write(Path file, byte[] bytes, Path scratch) throws IOException {
        Path temp = scratch.resolve("saving-" + UUID.randomUUID() + ".part");
        try {
            try (FileChannel out = FileChannel.open(temp, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
                keepRights(file, temp);
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

    /** A file that is replaced keeps who may read and write it; a new one gets what is usual for the user. */
    private static void keepRights(Path old, Path fresh) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (view != null && Files.exists(old)) {
            PosixFileAttributes was = Files.readAttributes(old, PosixFileAttributes.class);
            if (!was.group().equals(view.readAttributes().group())) {
                try {
                    view.setGroup(was.group());
                } catch (IOException e) {
                    // who is not of the group cannot give a file to it; then its members have no more right than others
                    view.setPermissions(withoutGroup(was.permissions()));
                    return;
                }
            }
            view.setPermissions(was.permissions());
        }
    }

    private static Set<PosixFilePermission> withoutGroup(Set<PosixFilePermission> rights) {
        Set<PosixFilePermission> all = EnumSet.copyOf(rights);
        if (!rights.contains(PosixFilePermission.OTHERS_READ)) {
            all.remove(PosixFilePermission.GROUP_READ);
        }
        if (!rights.contains(PosixFilePermission.OTHERS_WRITE)) {
            all.remove(PosixFilePermission.GROUP_WRITE);
        }
        return all;
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
