package dev.fairlead.intake.bind;

import dev.fairlead.intake.spelling.Abbreviations;
import dev.fairlead.intake.spelling.Nearest;
import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.shape.RecordShape;
import java.io.IOException;
import java.util.Collection;
import java.util.Optional;

/** Refuses fields that are twice there, unknown, or that name a person. */
final class Keys {
    private static final int LONGEST = 80;

    private Keys() {}

    /** The pointer of a field that may have any name; a very long one is cut, since it would fill the message. */
    static String pointer(String around, String key) {
        return around + '/' + RecordShape.escape(key.length() > LONGEST ? key.substring(0, LONGEST) + "…" : key);
    }

    /** Refuses the field whose name is the current token, and steps over its value. */
    static void refuse(Input in, String pointer, String key, Collection<String> known, boolean twice)
            throws IOException {
        Privacy.Refusal personal = Privacy.key(key);
        if (twice) {
            in.error(
                    pointer,
                    "each field once",
                    Input.quoted(key) + " again",
                    "a block that was copied and not changed",
                    "keep one of the two");
        } else if (personal != null) {
            in.error(pointer, "a case that does not tell who the patient is", personal.found(), "", personal.mend());
        } else if (key.matches("\\d+") && in.format == CaseFormat.YAML) {
            in.error(
                    pointer,
                    "a known field",
                    Input.quoted(key),
                    "a decimal comma within { }, where a comma parts two fields",
                    "write a point, or the value in quotation marks");
        } else {
            Optional<String> near = in.problems.full()
                    ? Optional.empty()
                    : Abbreviations.field(key, known).or(() -> Nearest.of(key, known));
            String mend = near.map(n -> "write " + n).orElse("known here: " + String.join(", ", known));
            in.error(
                    pointer,
                    "a known field",
                    Input.quoted(key),
                    near.map(n -> "a slip in writing " + n).orElse(""),
                    mend);
        }
        in.parser.nextToken();
        in.parser.skipChildren();
    }
}
