package dev.fairlead.intake.text;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.Optional;

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
        return new Problem(
                Severity.ERROR,
                "",
                line,
                column,
                format == CaseFormat.YAML ? "YAML" : "JSON",
                first(e.getOriginalMessage()),
                Optional.ofNullable(slip(at, e.getOriginalMessage(), format)),
                "mend this first: what stands behind it could not be read");
    }

    private static String slip(String line, String message, CaseFormat format) {
        if (format == CaseFormat.JSON) {
            if (line.matches(".*:\\s*-?\\d+,\\d+.*")) {
                return "a decimal comma: write a point, or put the value in quotation marks";
            }
            if (message.contains("eading zero")) {
                return "a number with zeros in front";
            }
            if (line.matches(".*[“”„‘’].*") || line.contains("'")) {
                return "quotation marks that are not \"";
            }
            if (line.matches("\\s*(//|#).*")) {
                return "a comment, which JSON does not have";
            }
            if (line.matches(".*,\\s*[}\\]].*") || line.matches("\\s*[}\\]],?\\s*")) {
                return "a comma behind the last entry";
            }
            return line.matches("\\s*\".*") ? "a missing comma at the end of the line before" : null;
        }
        if (message.contains("<block end>") || message.contains("did not find expected")) {
            return "an indent that is off by a blank or more here or just above, or a bracket that is not closed";
        }
        if (line.indexOf('{') >= 0 && line.indexOf('}') < 0
                || message.contains("flow mapping")
                || message.contains("flow sequence")) {
            return "a bracket { or [ that is not closed, or a comma that is missing in it";
        }
        return message.contains("mapping values are not allowed")
                ? "a colon in a text without quotation marks, a colon without a blank behind it just above, or an indent that is off"
                : null;
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

    /** What the parser met; a YAML parser says first what it was about, and then what was wrong. */
    private static String first(String message) {
        String[] said = message.strip().split("\n");
        String line = said[0];
        if (line.startsWith("while ")) {
            for (int i = said.length - 1; i > 0; i--) {
                boolean excerpt = said[i].startsWith(" ") || said[i].isBlank();
                line = excerpt ? line : said[i];
            }
            line = "text that cannot be read on (" + (line.startsWith("while ") ? said[0] : line) + ")";
        }
        line = line.replace("mapping values are not allowed here", "a colon where none can stand");
        // the parser repeats a piece of the file, which may hold anything; the place tells enough
        return line.replaceAll("'[^']{13,}'|\"[^\"]{13,}\"", "…").replaceAll(" \\(code \\d+\\)", "");
    }
}
