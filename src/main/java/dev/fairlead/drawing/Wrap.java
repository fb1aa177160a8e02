package dev.fairlead.drawing;

import java.util.StringTokenizer;

/** Breaks text between words for a terminal of 80 columns. */
public final class Wrap {
    /** Columns that text may take. */
    public static final int WIDTH = 80;

    private static final String BETWEEN_WORDS = " \t\n\u000B\f\r";

    private Wrap() {}

    /**
     * Lines of at most {@link #WIDTH} columns: the first behind {@code head}, the others indented as wide as it. Ends
     * with a line break.
     */
    public static String hanging(String head, String text) {
        String indent = " ".repeat(columns(head));
        StringBuilder out = new StringBuilder(head);
        int at = columns(head);
        boolean fresh = true;
        StringTokenizer words = new StringTokenizer(text.strip(), BETWEEN_WORDS);
        while (words.hasMoreTokens()) {
            String word = words.nextToken();
            int wide = columns(word);
            if (!fresh && at + 1 + wide > WIDTH) {
                out.append('\n').append(indent);
                at = indent.length();
                fresh = true;
            }
            if (!fresh) {
                out.append(' ');
                at++;
            }
            out.append(word);
            at += wide;
            fresh = false;
        }
        return out.append('\n').toString();
    }

    /** Columns of a text: code points; combining and wide characters do not occur in our texts. */
    public static int columns(String text) {
        return text.codePointCount(0, text.length());
    }
}
