package dev.fairlead.report.sheet;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes XHTML element by element; texts and attributes are escaped, and every element that is opened is closed. */
final class Markup {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are names and values by turns. */
    Markup open(String tag, String... attributes) {
        start(tag, attributes).append('>');
        open.push(tag);
        return this;
    }

    Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    Markup text(String text) {
        out.append(escape(text));
        return this;
    }

    /** An element with nothing but text. */
    Markup element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close();
    }

    Markup empty(String tag, String... attributes) {
        start(tag, attributes).append("/>");
        return this;
    }

    /** An element that is complete already, such as a drawing. */
    Markup whole(String element) {
        out.append(element);
        return this;
    }

    private StringBuilder start(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escape(attributes[i + 1]))
                    .append('"');
        }
        return out;
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** All that was written; refused while an element is open. */
    String done() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }
}
