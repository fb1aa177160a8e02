package dev.fairlead.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.Optional;

/** Tells in plain words where a file stops being JSON or YAML, or goes beyond what a case can be. */
final class Syntax {
    private Syntax() {}

    static Problem problem(JsonProcessingException e, String text, Format format, int line, int column) {
        String[] lines = text.split("\n", -1);
        String at = line >= 1 && line <= lines.length ? lines[line - 1] : "";
        if (e instanceof StreamConstraintsException) {
            return new Problem(Severity.ERROR, "", line, column, "a file of the size of a case", first(e.getOriginalMessage()), Optional.empty(),
                    "look whether this is the right file");
        }
        return new Problem(Severity.ERROR, "", line, column, format == Format.YAML ? "YAML" : "JSON", first(e.getOriginalMessage()),
                Optional.ofNullable(slip(at, e.getOriginalMessage(), format)), "mend this first: what stands behind it could not be read");
    }

    private static String slip(String line, String message, Format format) {
        if (format == Format.JSON) {
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
        if (line.contains("\t")) {
            return "a tab: indent with blanks";
        }
        return message.contains("mapping values are not allowed") ? "a colon without a blank behind it, or an indent that is off" : null;
    }

    private static String first(String message) {
        String line = message.strip().split("\n")[0];
        // the parser repeats a piece of the file, which may hold anything; the place tells enough
        return line.replaceAll("'[^']{13,}'|\"[^\"]{13,}\"", "…").replaceAll(" \\(code \\d+\\)", "");
    }
}
