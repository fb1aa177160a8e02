package dev.fairlead.intake.spelling;

import java.util.OptionalInt;

/**
 * Characters that a reader cannot see, and that can turn a text around, move a terminal's cursor or end a file:
 * control, bidirectional and format characters, halves of pairs, and code points that stand for no character.
 */
public final class Visible {
    private Visible() {}

    /** The first such code point of a text; line breaks and tabs are none, nor are joiners, which some scripts need. */
    public static OptionalInt odd(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            // most texts have nothing beyond these
            if (c >= ' ' && c < 0x7F) {
                continue;
            }
            int point = text.codePointAt(i);
            if (odd(point)) {
                return OptionalInt.of(point);
            }
            i += Character.charCount(point) - 1;
        }
        return OptionalInt.empty();
    }

    /** The text with every such code point written as its number, so that it can be shown anywhere. */
    public static String of(String text) {
        if (odd(text).isEmpty()) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(p -> {
            if (odd(p)) {
                shown.append('<').append(number(p)).append('>');
            } else {
                shown.appendCodePoint(p);
            }
        });
        return shown.toString();
    }

    /** Number and name of a code point, such as {@code U+202E RIGHT-TO-LEFT OVERRIDE}. */
    public static String name(int point) {
        String name = Character.getName(point);
        return number(point) + (name == null ? "" : " " + name);
    }

    private static String number(int point) {
        return String.format("U+%04X", point);
    }

    private static boolean odd(int point) {
        if (point == '\n' || point == '\t' || point == '\r' || point == 0x200C || point == 0x200D) {
            return false;
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }
}
