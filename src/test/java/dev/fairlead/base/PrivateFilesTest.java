package dev.fairlead.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept for the user alone can be read and changed by nobody else, and is never there in part. */
class PrivateFilesTest {
    @TempDir
    private Path folder;

    @Test
    void foldersAndFilesAreForTheUserAlone() throws IOException {
        Path made = folder.resolve("above/kept");
        PrivateFiles.folder(made);
        PrivateFiles.write(made.resolve("secret"), "old".getBytes(StandardCharsets.UTF_8));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)))
                .isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made.getParent())))
                .isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made.resolve("secret"))))
                .isEqualTo("rw-------");
        assertThat(PrivateFiles.alone(made)).isTrue();
        PrivateFiles.folder(made);
        assertThat(made.resolve("secret")).exists();
    }

    @Test
    void aFolderThatOthersCanReadIsNotTheUsersAlone() throws IOException {
        for (String rights : List.of("rwxr-x---", "rwx---r-x", "rwx-w----", "rw-------")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(rights));
            assertThat(PrivateFiles.alone(folder)).as(rights).isFalse();
        }
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        assertThat(PrivateFiles.alone(folder)).isTrue();
    }

    @Test
    void aFileIsReplacedWholeOrStaysAsItWas() throws IOException {
        Path file = folder.resolve("kept");
        PrivateFiles.write(file, "old".getBytes(StandardCharsets.UTF_8));
        PrivateFiles.write(file, "new".getBytes(StandardCharsets.UTF_8));
        assertThat(file).hasContent("new");
        Path inTheWay = Files.createDirectories(folder.resolve("way/in it")).getParent();
        assertThatThrownBy(() -> PrivateFiles.write(inTheWay, new byte[1])).isInstanceOf(IOException.class);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).as("no half of a file is left").containsExactlyInAnyOrder(file, inTheWay);
        }
    }

    /** Where a file system knows no such rights, it is used as it is. */
    @Test
    void aFileSystemWithoutRightsIsUsedAsItIs() throws IOException {
        try (FileSystem plain = FileSystems.newFileSystem(folder.resolve("plain.zip"), Map.of("create", "true"))) {
            Path made = plain.getPath("above", "kept");
            PrivateFiles.folder(made);
            assertThat(Files.isDirectory(made)).isTrue();
            assertThat(PrivateFiles.alone(made)).isTrue();
        }
    }

    @Test
    void theUsersFoldersAreThoseThatThePlatformNames() {
        assertThat(PrivateFiles.cache()).isAbsolute().hasFileName("fairlead");
        assertThat(PrivateFiles.settings()).isAbsolute().hasFileName("fairlead").isNotEqualTo(PrivateFiles.cache());
    }
}
