package dev.fairlead.web.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;

/** Who may read and write a file that takes the place of another: whoever could before, and nobody else. */
public final class FileRights {
    private FileRights() {}

    /**
     * Gives {@code fresh} owner, group and rights of {@code old}; where there is none it keeps those that are usual.
     * Throws where the old one may not be written to: to replace it would go round that.
     */
    public static void keep(Path old, Path fresh) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (view == null || !Files.exists(old)) {
            return;
        }
        if (!Files.isWritable(old)) {
            throw new AccessDeniedException(old.toString());
        }
        PosixFileAttributes was = Files.readAttributes(old, PosixFileAttributes.class);
        PosixFileAttributes is = view.readAttributes();
        if (!was.group().equals(is.group())) {
            try {
                view.setGroup(was.group());
            } catch (IOException e) {
                // who is not of the group cannot give a file to it; then its members have no more right than others
                view.setPermissions(withoutGroup(was.permissions()));
                return;
            }
        }
        view.setPermissions(was.permissions());
        if (!was.owner().equals(is.owner()) && is.owner().getName().equals("root")) {
            // only root can give a file away; anybody else who may write a file of another owner has the new one
            view.setOwner(was.owner());
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
}
