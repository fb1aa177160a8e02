package dev.fairlead.findings;

import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.shape.Edit;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * A fact that a criterion waits for.
 *
 * @param pointer JSON Pointer (RFC 6901) of where it would stand in the case
 * @param words the same for people, with the reason where it is not simply missing
 * @param kind why it is not there
 */
public record Missing(String pointer, String words, Kind kind) {
    /** Why a criterion waits for a fact; {@code missing} is said only of what was not entered. */
    public enum Kind {
        NOT_ENTERED("missing"),
        SECOND_READING("second reading"),
        CONTRADICTED("contradicts other facts"),
        FILM_NOT_READ("panoramic film not read");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Heading of a list in which something was entered and yet cannot be used. */
    public static final String WAITS = "Waits for";

    private static final String FILMS = "/films/";
    private static final String SECOND = "/-";

    /** A fact that was not entered. */
    public Missing(String pointer, String words) {
        this(pointer, words, Kind.NOT_ENTERED);
    }

    /** What is missing at {@code pointer}, of a case that is not at hand. */
    public static Missing of(String pointer) {
        return new Missing(
                pointer, Words.of(pointer), pointer.endsWith(SECOND) ? Kind.SECOND_READING : Kind.NOT_ENTERED);
    }

    /** What is missing in a case, told apart from what is there and contradicts other facts. */
    public static Function<String, Missing> in(Case c) {
        return pointer -> {
            Missing plain = of(pointer);
            boolean unread =
                    pointer.startsWith(FILMS) && c.films().panoramicRead().no();
            return plain.kind != Kind.NOT_ENTERED
                    ? plain
                    : there(c, pointer)
                            ? plain.because(Kind.CONTRADICTED)
                            : unread ? plain.because(Kind.FILM_NOT_READ) : plain;
        };
    }

    private static boolean there(Case c, String pointer) {
        try {
            return Edit.get(c, pointer) instanceof CaseValue v && (v.known() || v.doesNotApply());
        } catch (IllegalArgumentException nowhere) {
            return false;
        }
    }

    /** What a value of a case waits for, each told apart in the same way. */
    public static List<Missing> of(CaseValue value, Case c) {
        return value.known() || !value.applies()
                ? List.of()
                : value.missing().stream().map(in(c)).distinct().toList();
    }

    private Missing because(Kind why) {
        return new Missing(pointer, words + " (" + why.word + ")", why);
    }

    /** What stands in front of a list of these. */
    public static String heading(List<Missing> all) {
        for (Missing m : all) {
            if (m.kind != Kind.NOT_ENTERED) {
                return WAITS;
            }
        }
        return "Missing";
    }

    /** Heading and words of the first {@code most} in one line, and how many there are beyond. */
    public static String line(List<Missing> all, int most) {
        List<String> words = all.stream().map(Missing::words).limit(most).toList();
        return heading(all).toLowerCase(Locale.ROOT) + ": " + String.join("; ", words)
                + (all.size() > most ? "; and " + (all.size() - most) + " more" : "");
    }
}
