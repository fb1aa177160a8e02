package dev.fairlead.intake.bind;

import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.model.Tooth;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Tooth numbers: ISO 3950 only, with a guess at what was meant when a number of the Universal system (1-32, A-T) or a
 * Palmer or quadrant-letter notation (LL1, URc) is met.
 */
public final class Numbering {
    public static final String EXPECTED =
            "a tooth number of ISO 3950: 11-18, 21-28, 31-38, 41-48, or 51-55, 61-65, 71-75, 81-85 for primary teeth";

    private static final Tooth[] BY_NUMBER = new Tooth[86];
    private static final Pattern QUADRANT = Pattern.compile("(U|L)(R|L)[ -]?([1-8a-eA-E])");
    private static final Pattern PALMER =
            Pattern.compile("([1-8a-eA-E])[ ]?([┘└┐┌⏌⎿⏋⎾])|([┘└┐┌⏌⎿⏋⎾])[ ]?([1-8a-eA-E])");

    static {
        for (int n = 0; n < BY_NUMBER.length; n++) {
            BY_NUMBER[n] = Tooth.exists(n) ? new Tooth(n) : null;
        }
    }

    private Numbering() {}

    /** The tooth with that number, or null. */
    public static @Nullable Tooth tooth(String text) {
        if (text.length() != 2) {
            return null;
        }
        int a = text.charAt(0) - '0';
        int b = text.charAt(1) - '0';
        return a < 1 || a > 8 || b < 1 || b > 8 ? null : a * 10 + b < BY_NUMBER.length ? BY_NUMBER[a * 10 + b] : null;
    }

    public static void refuse(Input in, String pointer, String text) {
        Problem p = refusal(pointer, text, 0, 0);
        in.error(pointer, p.expected(), p.found(), p.slip().orElse(""), p.mend());
    }

    /** What is wrong with a text that is no tooth number. */
    public static Problem refusal(String pointer, String text, int line, int column) {
        Privacy.Refusal personal = Privacy.text(text);
        if (personal != null) {
            return new Problem(
                    Severity.ERROR,
                    pointer,
                    line,
                    column,
                    EXPECTED,
                    personal.found(),
                    Optional.empty(),
                    personal.mend());
        }
        Optional<Tooth> quadrant = quadrant(text);
        Optional<Tooth> universal = universal(text);
        Optional<String> slip = quadrant.map(t -> "a Palmer or quadrant notation for " + t)
                .or(() -> universal.map(t -> "a number of the Universal system for " + t));
        String mend = quadrant.or(() -> universal).map(t -> "write " + t).orElse("write the two-digit number");
        return new Problem(Severity.ERROR, pointer, line, column, EXPECTED, Input.quoted(text), slip, mend);
    }

    /**
     * The tooth that the Universal system gives that number or letter (ADA): 1-16 from the upper right third molar to
     * the upper left one, 17-32 back along the lower arch from left to right; A-J and K-T likewise for primary teeth.
     */
    public static Optional<Tooth> universal(String text) {
        String t = text.strip().replaceFirst("^#", "").toUpperCase(Locale.ROOT);
        if (t.matches("[A-T]")) {
            int i = t.charAt(0) - 'A';
            return Optional.of(Tooth.of(i < 5 ? 55 - i : i < 10 ? 56 + i : i < 15 ? 85 - i : 66 + i));
        }
        if (!t.matches("0?[1-9]|[12][0-9]|3[0-2]")) {
            return Optional.empty();
        }
        int n = Integer.parseInt(t);
        return Optional.of(Tooth.of(n <= 8 ? 19 - n : n <= 16 ? 12 + n : n <= 24 ? 55 - n : 16 + n));
    }

    private static Optional<Tooth> quadrant(String text) {
        Matcher q = QUADRANT.matcher(text.strip());
        if (q.matches()) {
            return at(q.group(1).equals("U"), q.group(2).equals("R"), q.group(3));
        }
        Matcher p = PALMER.matcher(text.strip());
        if (p.matches()) {
            String corner = p.group(2) != null ? p.group(2) : p.group(3);
            return at("┘└⏌⎿".contains(corner), "┘┐⏌⏋".contains(corner), p.group(1) != null ? p.group(1) : p.group(4));
        }
        return Optional.empty();
    }

    private static Optional<Tooth> at(boolean upper, boolean right, String position) {
        char c = Character.toLowerCase(position.charAt(0));
        boolean primary = c >= 'a';
        int quadrant = (upper ? right ? 1 : 2 : right ? 4 : 3) + (primary ? 4 : 0);
        return Optional.of(Tooth.of(quadrant * 10 + (primary ? c - 'a' + 1 : c - '0')));
    }
}
