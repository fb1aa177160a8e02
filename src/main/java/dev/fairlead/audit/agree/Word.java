package dev.fairlead.audit.agree;

import dev.fairlead.rules.catalogue.Ending;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Verdicts as a reviewer and the program can both give them; the first ones rise in weight, the last ones stand beside.
 */
public enum Word {
    PASS,
    WARN,
    CAUTION,
    STOP,
    NOT_ASSESSED,
    DOES_NOT_APPLY;

    /** The word as it is written. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** True for those that lie on one scale from pass to stop. */
    public boolean ordered() {
        return ordinal() <= STOP.ordinal();
    }

    /** The verdict that a text names, or null. */
    static @Nullable Word of(String text) {
        String t = text.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        return Arrays.stream(values())
                .filter(w -> w.word().equals(t))
                .findFirst()
                .orElse(null);
    }

    static String all() {
        return Arrays.stream(values()).map(Word::word).collect(Collectors.joining(", "));
    }

    /** The verdict of the program; {@code plain} when the reviewer knows no weights of warnings. */
    static Word of(Ending e, boolean plain) {
        return switch (e) {
            case STOP -> plain ? WARN : STOP;
            case CAUTION -> plain ? WARN : CAUTION;
            case NOT_ASSESSED, FAILED -> NOT_ASSESSED;
            case PASS -> PASS;
            case DOES_NOT_APPLY -> DOES_NOT_APPLY;
        };
    }
}
