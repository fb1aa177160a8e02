package dev.fairlead.intake.text;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Finds where in a file a JSON Pointer stands; a second pass that is made only when there are problems. */
public final class Locator {
    private Locator() {}

    /** The pointer of the value at the current token. */
    public static String pointer(JsonParser p) {
        JsonStreamContext context = p.getParsingContext();
        return (p.currentToken().isStructStart() ? context.getParent() : context)
                .pathAsPointer()
                .toString();
    }

    /**
     * Line and column of each pointer, or of the nearest object around it that is in the file; a file that ends early
     * gives what was met.
     */
    public static Map<String, int[]> locate(String text, CaseFormat format, Set<String> pointers) {
        Map<String, int[]> met = new HashMap<>();
        try (JsonParser p = CaseParsers.open(text, format, new Problems())) {
            for (JsonToken t = p.nextToken(); t != null; t = p.nextToken()) {
                if (t != JsonToken.FIELD_NAME && !t.isStructEnd()) {
                    JsonLocation at = p.currentTokenLocation();
                    met.putIfAbsent(pointer(p), new int[] {at.getLineNr(), at.getColumnNr()});
                }
            }
        } catch (IOException e) {
            // the first pass has reported this already; places up to here still hold
            met.putIfAbsent("", new int[] {1, 1});
        }
        Map<String, int[]> found = new HashMap<>();
        for (String wanted : pointers) {
            String p = wanted;
            while (!met.containsKey(p) && !p.isEmpty()) {
                p = p.substring(0, p.lastIndexOf('/'));
            }
            if (met.containsKey(p)) {
                found.put(wanted, met.get(p));
            }
        }
        return found;
    }
}
