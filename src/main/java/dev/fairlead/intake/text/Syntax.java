package dev.fairlead.intake.text;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Tells in plain words where a file stops being JSON or YAML, or goes beyond what a case can be. */
public final class Syntax {
    private Syntax() {}

    public static Problem problem(JsonProcessingException e, String text, CaseFormat format, int line, int column) {
        String[] lines = text.split("\n", -1);
        String at = line >= 1 && line <= lines.length ? lines[line - 1] : "";
        if (e instanceof StreamConstraintsException) {
            return new Problem(
                    Severity.ERROR,
                    "",
                    line,
                    column,
                    "a file of the size of a case",
                    first(e.getOriginalMessage()),
                    Optional.empty(),
                    "look whether this is the right file");
        }
        int tab = format == CaseFormat.YAML ? tab(lines, line) : 0;
        if (tab > 0) {
            return new Problem(
                    Severity.ERROR,
                    "",
                    tab,
                    lines[tab - 1].indexOf('\t') + 1,
                    "blanks in front of a field",
                    "a tab",
                    Optional.empty(),
                    "put blanks in its place; what stands behind it could not be read");
        }
        String met = first(e.getOriginalMessage());
        return new Problem(
                Severity.ERROR,
                "",
                line,
                column,
                format == CaseFormat.YAML ? "YAML" : "JSON",
                met,
                Optional.ofNullable(slip(lines, line, at, e.getOriginalMessage(), format))
                        .filter(slip -> !slip.equals(met)),
                "correct this first: what stands behind it could not be read");
    }

    private static @Nullable String slip(String[] lines, int at, String line, String message, CaseFormat format) {
        if (format == CaseFormat.JSON) {
            if (line.matches(".*:\\s*-?\\d+,\\d+.*")) {
                return "a decimal comma: write a point, or put the value in quotation marks";
            }
            if (message.contains("eading zero")) {
                return "a number with zeros in front";
            }
            if (message.matches("(?s).*character \\('[“”„‘’']'.*")) {
                return "quotation marks that are not \"";
            }
            if (line.matches("\\s*(//|#).*")) {
                return "a comment, which JSON does not have";
            }
            boolean closes = at >= 2 && line.matches("\\s*[}\\]].*");
            if (line.matches(".*,\\s*[}\\]].*") || closes && lines[at - 2].matches(".*,\\s*")) {
                return "a comma behind the last entry";
            }
            return line.matches("\\s*\".*") ? "a missing comma at the end of the line before" : null;
        }
        if (message.contains("<block end>") || message.contains("did not find expected")) {
            return "an indent that is off by a blank or more here or just above, or a bracket that is not closed";
        }
        if (message.contains("mapping values are not allowed") && deeper(lines, at)) {
            return "an indent that is off: this line stands further in than the one above it, which already has a value";
        }
        return message.contains("mapping values are not allowed")
                ? "a colon in a text without quotation marks, a colon without a blank behind it just above, or an indent that is off"
                : null;
    }

    /** True when a line stands further in than the one above it that is not blank, and that one has a value already. */
    private static boolean deeper(String[] lines, int at) {
        for (int i = at - 1; i >= 1; i--) {
            String above = lines[i - 1];
            if (!above.isBlank()) {
                return above.matches("\\s*[^\\s#][^:]*:\\s+[^\\s#].*") && indent(lines[at - 1]) > indent(above);
            }
        }
        return false;
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    /** The first line from just before {@code line} on that is indented with a tab; 0 when there is none close by. */
    private static int tab(String[] lines, int line) {
        for (int i = Math.max(1, line - 1); i <= Math.min(lines.length, line + 1); i++) {
            if (lines[i - 1].matches("\\s*\\t\\s*\\S.*")) {
                return i;
            }
        }
        return 0;
    }

    /** Beginnings of what parsers say, and what that is in plain words; they say it for programmers. */
    private static final String[][] PLAIN = {
        {"esting depth", "objects or lists within each other deeper than any case"},
        {"tring value length", "a text of more than 10 000 characters"},
        {"umber value length", "a number of more than 40 digits"},
        {"ame value length", "the name of a field of more than 200 characters"},
        {"oken count", "far more values than any case has"},
        {"ocument length", "a file of more than 2 000 000 characters"},
        {"a line of more than", "a line of more than 100 000 characters"},
        {"end-of-input", "the end of the file in the middle of the case"},
        {"end of input", "the end of the file in the middle of the case"},
        {"eading zero", "a number with zeros in front"},
        {"nrecognized token", "a word without quotation marks"},
        {"was expecting double-quote", "the name of a field without quotation marks"},
        {"was expecting a colon", "a field without a colon behind its name"},
        {"was expecting comma", "two values without a comma between them"},
        {"mapping values are not allowed", "a colon where none can stand"},
        {"could not find expected ':'", "a line without a colon behind the name of its field"},
        {"special characters are not allowed", "a character that cannot be seen"},
        {"control character", "a character that cannot be seen, or a line break within a text"},
        {"CTRL-CHAR", "a character that cannot be seen, or a line break within a text"},
        {"escape", "a backslash before a character that needs none"},
        {"nvalid UTF-8", "a byte that is not UTF-8"},
        {"numeric", "a number that is not written out"},
        {"'%'", "a line that begins with %"},
        {"'@'", "a value that begins with @"},
        {"'`'", "a value that begins with `"},
        {"TAB", "a tab where blanks belong"},
        {"got this instead", "a list or an object where the name of a field belongs"},
        {"anchor", "an & or a * without a name behind it"},
        {"alias", "an & or a * without a name behind it"},
        {"tag", "an exclamation mark in front of a value"},
        {"flow", "a bracket { or [ that is not closed, or a comma that is missing in it"},
        {"quoted scalar", "a text whose closing quotation mark is missing"},
        {"block end", "a line that stands further in or out than those around it"},
        {"block collection", "a line that stands further in or out than those around it"},
        {"block mapping", "a line that stands further in or out than those around it"},
        {"nexpected character", "a character that cannot stand there"},
    };

    /** What the parser met, without its own words: it may also repeat a piece of the file, which may hold anything. */
    private static String first(String message) {
        for (String[] plain : PLAIN) {
            if (message.contains(plain[0])) {
                return plain[1];
            }
        }
        return "text that cannot be read on";
    }
}
