package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.intake.text.Severity;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The open file while it is read: the parser, and where problems go, each with the place of the current token. */
public final class Input {
    public final JsonParser parser;
    public final CaseFormat format;
    public final String text;
    public final Problems problems;
    /** Whether quantities are given their errors of measurement. */
    public final boolean errors;
    /**
     * Where the problems of a value stand that is judged after it was read over; null while the current token is
     * judged.
     */
    public @Nullable JsonLocation pinned;

    public Input(JsonParser parser, CaseFormat format, String text, Problems problems, boolean errors) {
        this.errors = errors;
        this.parser = parser;
        this.format = format;
        this.text = text;
        this.problems = problems;
    }

    public void error(String pointer, String expected, String found, String slip, String mend) {
        add(Severity.ERROR, pointer, expected, found, slip, mend);
    }

    public void doubt(String pointer, String expected, String found, String slip, String mend) {
        add(Severity.DOUBT, pointer, expected, found, slip, mend);
    }

    private void add(Severity severity, String pointer, String expected, String found, String slip, String mend) {
        if (!problems.kept()) {
            throw Problems.met();
        }
        JsonLocation at = pinned != null ? pinned : parser.currentTokenLocation();
        problems.add(new Problem(
                severity,
                pointer,
                Math.max(0, at.getLineNr()),
                Math.max(0, at.getColumnNr()),
                expected,
                found,
                slip.isEmpty() ? Optional.empty() : Optional.of(slip),
                mend));
    }

    /** Refuses a value of the wrong kind, and steps over it. */
    public void wrong(String pointer, String expected) throws IOException {
        if (parser.currentToken() == JsonToken.VALUE_NULL) {
            error(pointer, expected, "nothing", "", "write unknown, or leave the field out");
        } else {
            error(pointer, expected, found(), "", "");
        }
        parser.skipChildren();
    }

    /** The current value in words, short enough for a message. */
    public String found() throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> "an object";
            case START_ARRAY -> "a list";
            case VALUE_NULL -> "nothing";
            case VALUE_TRUE, VALUE_FALSE -> parser.getText();
            case VALUE_STRING -> quoted(parser.getText());
            default -> "the number " + cut(parser.getText());
        };
    }

    public static String quoted(String s) {
        return s.isEmpty() ? "nothing" : "\"" + cut(s) + "\"";
    }

    private static String cut(String s) {
        return s.length() > 40 ? s.substring(0, 40) + "…" : s;
    }
}
