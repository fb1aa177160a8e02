package dev.fairlead.cli;

import dev.fairlead.base.Hash;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.report.html.LoggedChange;
import dev.fairlead.web.page.LastChanges;
import dev.fairlead.web.store.ChangeLog;
import java.io.FileInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A case as it was named in a call, and what reading it gave.
 *
 * @param bytes what was read; empty where nothing could be
 * @param file where it was read; empty for standard input
 */
record Named(String name, CaseReading reading, byte[] bytes, Optional<Path> file) {
    /** More than the reader takes, so that it can say that the input is too large. */
    private static final int MOST_BYTES = 4 << 20;

    /** Reads a file, or standard input for {@code -}. */
    static Named read(String name) {
        try (InputStream in = name.equals("-") ? System.in : open(name)) {
            byte[] bytes = in.readNBytes(MOST_BYTES);
            String shown = name.equals("-") ? "standard input" : Visible.of(name);
            Optional<Named> many = table(shown);
            if (many.isPresent() && !name.equals("-")) {
                return many.get();
            }
            return new Named(
                    shown,
                    CaseReader.read(bytes, shown, CaseFormat.BY_NAME),
                    bytes,
                    name.equals("-") ? Optional.empty() : Optional.of(Path.of(name)));
        } catch (NoSuchFileException e) {
            boolean pattern = name.indexOf('*') >= 0 || name.indexOf('?') >= 0;
            return unreadable(
                    name,
                    pattern ? "a pattern that no file matches" : "no such file",
                    "look at the name and the folder, " + Path.of("").toAbsolutePath());
        } catch (AccessDeniedException e) {
            return unreadable(name, "a file that you are not allowed to read", "look at its permissions");
        } catch (InvalidPathException e) {
            return unreadable(name, PathNames.found(name), PathNames.mend(name));
        } catch (IOException e) {
            if (Files.isDirectory(Path.of(name))) {
                return unreadable(name, "a folder", "name the files in it, or use audit, which takes folders");
            }
            return unreadable(
                    name, "one that cannot be read (" + WholeFile.why(e) + ")", "look at the name and the disk");
        }
    }

    /** Refuses what holds many cases, by its name. */
    private static Optional<Named> table(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return Stream.of(".csv", ".xlsx", ".ndjson", ".zip").anyMatch(lower::endsWith)
                ? Optional.of(unreadable(name, "a file of many cases, by its name", "write: audit " + name))
                : Optional.empty();
    }

    /**
     * What opens a file in the older way is there from the start; the newer way is loaded only to say better why it
     * cannot be opened.
     */
    private static InputStream open(String name) throws IOException {
        try {
            return new FileInputStream(name);
        } catch (FileNotFoundException e) {
            return Files.newInputStream(Path.of(name));
        }
    }

    /** One file that cannot be read leaves the others to be checked. */
    private static Named unreadable(String name, String found, String mend) {
        String shown = Visible.of(name);
        Problem problem = new Problem(Severity.ERROR, "", 0, 0, "a file with a case", found, Optional.empty(), mend);
        return new Named(
                shown, new CaseReading(shown, Optional.empty(), List.of(problem)), new byte[0], Optional.empty());
    }

    /** Its last changes, where it lies in a folder that the local page serves and was changed there. */
    List<LoggedChange> changes() {
        // most cases have no log: what reads one is loaded only where there is one
        return file.filter(f -> f.resolveSibling(".history").toFile().isDirectory())
                .map(f -> LastChanges.of(ChangeLog.beside(f)))
                .orElse(List.of());
    }

    /** Says on {@code console} why the case was refused. */
    void refuse(Console console) {
        int n = reading.errors().size();
        console.err().println(name + ": refused, " + n + (n == 1 ? " problem:" : " problems:"));
        // only errors refuse a case; a doubt beside them is marked as one
        reading.problems()
                .forEach(
                        p -> console.err().print(Wrap.hanging("  ", p.error() ? p.toString() : "(only a doubt) " + p)));
    }

    /** SHA-256 of its bytes. */
    String hash() {
        return Hash.of(bytes);
    }
}
