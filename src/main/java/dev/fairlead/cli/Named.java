package dev.fairlead.cli;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.Format;
import dev.fairlead.intake.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A case as it was named in a call, and what reading it gave.
 *
 * @param hash SHA-256 of its bytes
 */
record Named(String name, Reading reading, String hash) {
    /** More than the reader takes, so that it can say that the input is too large. */
    private static final int MOST_BYTES = 4 << 20;

    /** Reads a file, or standard input for {@code -}. */
    static Named read(String name) {
        try (InputStream in = name.equals("-") ? System.in : Files.newInputStream(Path.of(name))) {
            byte[] bytes = in.readNBytes(MOST_BYTES);
            String shown = name.equals("-") ? "standard input" : name;
            return new Named(shown, CaseReader.read(bytes, shown, Format.BY_NAME), HexFormat.of().formatHex(sha256().digest(bytes)));
        } catch (NoSuchFileException e) {
            throw new Main.Stop(ExitCode.UNREADABLE, name + ": there is no such file");
        } catch (IOException | java.nio.file.InvalidPathException e) {
            throw new Main.Stop(ExitCode.UNREADABLE, name + ": cannot be read (" + e.getMessage() + ")");
        }
    }

    /** Says on {@code console} why the case was refused. */
    void refuse(Console console) {
        int n = reading.errors().size();
        console.err().println(name + ": refused, " + n + (n == 1 ? " problem:" : " problems:"));
        reading.problems().forEach(p -> console.err().print(dev.fairlead.report.text.Wrap.hanging("  ", p.toString())));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
