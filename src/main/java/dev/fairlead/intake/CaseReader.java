package dev.fairlead.intake;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.model.Case;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads a case file in one pass, and tells every problem of it at once. Immutable and safe to share between threads.
 */
public final class CaseReader {
    private CaseReader() {}

    /** Reads a file; its name's ending tells the format. A file that is too large is not read whole. */
    public static Reading read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            Path name = file.getFileName();
            return read(
                    in.readNBytes(Parsers.MOST_BYTES + 1),
                    name == null ? file.toString() : name.toString(),
                    Format.BY_NAME);
        }
    }

    /**
     * Reads the bytes of a file; {@code name} is only for messages and, with {@link Format#BY_NAME}, for the format.
     */
    public static Reading read(byte[] bytes, String name, Format format) {
        return read(bytes, name, format, true);
    }

    /**
     * The same without errors of measurement, which no verdict rests on: all quantities are taken as exact. For audits
     * of many cases, where following the errors would cost more than everything else.
     */
    public static Reading readExact(byte[] bytes, String name, Format format) {
        return read(bytes, name, format, false);
    }

    private static Reading read(byte[] bytes, String name, Format format, boolean errors) {
        Problems problems = new Problems();
        String text = Decoding.text(bytes, problems);
        if (text == null) {
            return new Reading(name, Optional.empty(), problems.located("", Format.JSON));
        }
        Format actual = format.resolve(name, text);
        Case clean = actual == Format.JSON ? clean(bytes, errors) : null;
        if (clean != null) {
            return new Reading(name, Optional.of(clean), List.of());
        }
        Case read = parse(text, actual, problems, errors);
        if (read != null) {
            CrossChecks.run(read, problems);
        }
        if (!problems.any()) {
            return new Reading(name, Optional.of(read), List.of());
        }
        return new Reading(
                name, problems.errors() ? Optional.empty() : Optional.ofNullable(read), problems.located(text, actual));
    }

    /**
     * Most files have no problem: the case of one that has none, else null. What is wrong, and where, is only looked
     * for in a second reading.
     */
    private static Case clean(byte[] bytes, boolean errors) {
        Problems none = Problems.none();
        try (JsonParser parser = Parsers.open(bytes)) {
            Case read = whole(new Input(parser, Format.JSON, "", none, errors));
            if (read != null) {
                CrossChecks.run(read, none);
            }
            return read;
        } catch (Problems.Met | IOException e) {
            return null;
        }
    }

    private static Case parse(String text, Format format, Problems problems, boolean errors) {
        try (JsonParser parser = Parsers.open(text, format, problems)) {
            return whole(new Input(parser, format, text, problems, errors));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            problems.add(Syntax.problem(
                    e,
                    text,
                    format,
                    at == null ? 0 : Math.max(0, at.getLineNr()),
                    at == null ? 0 : Math.max(0, at.getColumnNr())));
            return null;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("reading from memory cannot fail", e);
        }
    }

    private static Case whole(Input in) throws IOException {
        JsonToken first = in.parser.nextToken();
        if (first != JsonToken.START_OBJECT) {
            if (first == null) {
                in.problems.add(new Problem(
                        Severity.ERROR, "", 1, 1, "a case", "nothing but blanks and comments", Optional.empty(), ""));
            } else {
                in.wrong("", "a case: an object with fairlead, id and stage");
            }
            return null;
        }
        Case read = new Binder(in).read();
        if (in.parser.nextToken() != null) {
            in.error(
                    "",
                    "the end of the file",
                    in.format == Format.YAML ? "a second document or more text" : "more text behind the case",
                    "two cases in one file",
                    "put each case in a file of its own");
        }
        return in.problems.errors() ? null : read;
    }
}
