package dev.fairlead.findings;

import dev.fairlead.rules.catalogue.Status;
import java.util.List;

/**
 * What a criterion finds at one place.
 *
 * @param pointer JSON Pointer of the place
 * @param words the place for people; empty for the case as a whole
 * @param text what is seen there
 * @param values the numbers behind it
 * @param close the error of a number reaches across its limit
 */
public record PlaceFinding(
        String pointer,
        String words,
        Status outcome,
        Weight weight,
        String text,
        List<SeenValue> values,
        List<Missing> missing,
        boolean close) {
    public PlaceFinding {
        values = List.copyOf(values);
        missing = List.copyOf(missing);
    }
}
