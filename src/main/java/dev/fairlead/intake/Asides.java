package dev.fairlead.intake;

import dev.fairlead.intake.crosscheck.PersonDoubts;
import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.model.Case;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What stands beside a case and no field holds: comments, and the name of its file. They may name somebody too. */
final class Asides {
    private Asides() {}

    /** True where the name of a file must be looked at with the case, for it may name somebody. */
    static boolean doubtful(String file) {
        return Privacy.fileName(last(file)) != null;
    }

    /** Tells of both; {@code read} is the case, or null where it could not be read. */
    static void check(@Nullable Case read, String file, String text, CaseFormat format, Problems problems) {
        String name = last(file);
        tell(read, name, Privacy.fileName(name), "a file name", 0, 0, problems);
        if (format == CaseFormat.YAML) {
            int line = 0;
            for (int from = 0; from < text.length(); ) {
                int end = text.indexOf('\n', from);
                end = end < 0 ? text.length() : end;
                line++;
                int at = comment(text, from, end);
                if (at >= 0) {
                    String words = text.substring(at + 1, end).strip();
                    tell(read, words, Privacy.comment(words), "a comment", line, at - from + 1, problems);
                }
                from = end + 1;
            }
        }
    }

    private static void tell(
            @Nullable Case read,
            String text,
            Privacy.@Nullable Refusal found,
            String what,
            int line,
            int column,
            Problems problems) {
        if (found == null) {
            return;
        }
        if (!found.sure() && read != null) {
            Privacy.Refusal left = Privacy.comment(PersonDoubts.unanswered(read, text));
            if (left == null) {
                return;
            }
        }
        problems.add(new Problem(
                found.sure() ? Severity.ERROR : Severity.DOUBT,
                "",
                line,
                column,
                what + " that does not tell who the patient is",
                found.found(),
                Optional.empty(),
                found.mend()));
    }

    /** Where a comment begins in a line of YAML, or -1; a sign within quotation marks begins none. */
    private static int comment(String text, int from, int end) {
        char quote = 0;
        for (int i = from; i < end; i++) {
            char c = text.charAt(i);
            char before = i == from ? ' ' : text.charAt(i - 1);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if ((c == '"' || c == '\'') && " \t[{,:".indexOf(before) >= 0) {
                quote = c;
            } else if (c == '#' && (before == ' ' || before == '\t')) {
                return i;
            }
        }
        return -1;
    }

    /** The last part of a path, without its ending. */
    private static String last(String file) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
