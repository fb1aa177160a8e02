package dev.fairlead.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: one that is there stays as it is until the new one is complete. */
final class WholeFile {
    private WholeFile() {}

    static void write(Path file, byte[] bytes) {
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new Main.Stop(
                    ExitCode.USAGE, file + ": the folder " + folder.getFileName() + " is not there; make it first.");
        }
        try {
            Path draft = folder.resolve("." + file.getFileName() + ".part");
            try {
                Files.write(draft, bytes);
                Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(draft);
            }
        } catch (IOException e) {
            throw new Main.Stop(ExitCode.USAGE, file + ": cannot be written (" + e.getMessage() + ").");
        }
    }
}
