package dev.fairlead.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Help.Ansi;

/**
 * Colours the outcomes and headings of a text report where it goes to a terminal; the words say the same without. The
 * variable NO_COLOR turns it off, as picocli reads it.
 */
final class Colour {
    private static final Pattern MARK = Pattern.compile(
            "^(STOP|CAUTION|LIMIT)(?= )|^  (pass|not assessed|on the limit)(?= )|^[A-Z][A-Z0-9 ,:().-]+$",
            Pattern.MULTILINE);

    private Colour() {}

    static String of(String text) {
        return Ansi.AUTO.enabled() ? painted(text) : text;
    }

    /** The text with escape sequences of ECMA-48: bold headings, stops red, cautions yellow, passes green. */
    static String painted(String text) {
        Matcher m = MARK.matcher(text);
        return m.replaceAll(
                r -> "\u001b[" + code(r.group().strip()) + "m" + Matcher.quoteReplacement(r.group()) + "\u001b[0m");
    }

    private static String code(String mark) {
        return switch (mark) {
            case "STOP" -> "1;31";
            case "CAUTION", "LIMIT", "on the limit" -> "1;33";
            case "pass" -> "32";
            case "not assessed" -> "36";
            default -> "1";
        };
    }
}
