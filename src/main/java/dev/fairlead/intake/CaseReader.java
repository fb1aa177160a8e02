package dev.fairlead.intake;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.intake.bind.Binder;
import dev.fairlead.intake.bind.Input;
import dev.fairlead.intake.crosscheck.CrossChecks;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.CaseParsers;
import dev.fairlead.intake.text.Decoding;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.intake.text.Syntax;
import dev.fairlead.model.Case;
import dev.fairlead.model.shape.SharedScales;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads a case file in one pass, and tells every problem of it at once. Immutable and safe to share between threads.
 */
public final class CaseReader {
    private CaseReader() {}

    /** Reads a file; its name's ending tells the format. A file that is too large is not read whole. */
    public static CaseReading read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            Path name = file.getFileName();
            return read(
                    in.readNBytes(CaseParsers.MOST_BYTES + 1),
                    name == null ? file.toString() : name.toString(),
                    CaseFormat.BY_NAME);
        }
    }

    /**
     * Reads the bytes of a file; {@code name} is only for messages and, with {@link CaseFormat#BY_NAME}, for the
     * format.
     */
    public static CaseReading read(byte[] bytes, String name, CaseFormat format) {
        return read(bytes, name, format, true);
    }

    /**
     * The same without errors of measurement, which no verdict rests on: all quantities are taken as exact. For audits
     * of many cases, where following the errors would cost more than everything else.
     */
    public static CaseReading readExact(byte[] bytes, String name, CaseFormat format) {
        return read(bytes, name, format, false);
    }

    private static CaseReading read(byte[] bytes, String name, CaseFormat format, boolean errors) {
        Problems problems = new Problems();
        String text = Decoding.text(bytes, problems);
        if (text == null) {
            return new CaseReading(name, Optional.empty(), problems.located("", CaseFormat.JSON));
        }
        CaseFormat actual = format.resolve(name, text);
        Case clean = actual == CaseFormat.JSON ? clean(bytes, errors) : null;
        boolean doubtful = format == CaseFormat.BY_NAME && Asides.doubtful(name);
        if (clean != null && !doubtful) {
            return new CaseReading(name, Optional.of(clean), List.of());
        }
        Case read = parse(text, actual, problems, errors);
        if (read != null) {
            CrossChecks.run(read, problems);
            read = read.pictured().isEmpty() ? read : SharedScales.in(read);
        }
        Asides.check(read, format == CaseFormat.BY_NAME ? name : "", text, actual, problems);
        return new CaseReading(
                name, problems.errors() ? Optional.empty() : Optional.ofNullable(read), problems.located(text, actual));
    }

    /**
     * Most files have no problem: the case of one that has none, else null. What is wrong, and where, is only looked
     * for in a second reading.
     */
    private static @Nullable Case clean(byte[] bytes, boolean errors) {
        Problems none = Problems.none();
        try (JsonParser parser = CaseParsers.open(bytes)) {
            Case read = whole(new Input(parser, CaseFormat.JSON, "", none, errors));
            if (read != null) {
                CrossChecks.run(read, none);
            }
            return read == null || read.pictured().isEmpty() ? read : SharedScales.in(read);
        } catch (Problems.Met | IOException e) {
            return null;
        }
    }

    private static @Nullable Case parse(String text, CaseFormat format, Problems problems, boolean errors) {
        try (JsonParser parser = CaseParsers.open(text, format, problems)) {
            try {
                return whole(new Input(parser, format, text, problems, errors));
            } catch (JsonProcessingException e) {
                // what is too deep or too long is told without a place: it is where the parser stands
                told(e, e.getLocation() == null ? parser.currentLocation() : e.getLocation(), text, format, problems);
                return null;
            }
        } catch (JsonProcessingException e) {
            told(e, e.getLocation(), text, format, problems);
            return null;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("reading from memory cannot fail", e);
        }
    }

    private static void told(
            JsonProcessingException e, JsonLocation at, String text, CaseFormat format, Problems problems) {
        problems.add(Syntax.problem(
                e,
                text,
                format,
                at == null ? 0 : Math.max(0, at.getLineNr()),
                at == null ? 0 : Math.max(0, at.getColumnNr())));
    }

    private static @Nullable Case whole(Input in) throws IOException {
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
                    in.format == CaseFormat.YAML ? "a second document or more text" : "more text behind the case",
                    "two cases in one file",
                    "put each case in a file of its own");
        }
        return in.problems.errors() ? null : read;
    }
}
