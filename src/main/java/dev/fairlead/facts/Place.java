package dev.fairlead.facts;

/**
 * Where in a case something stands.
 *
 * @param pointer JSON Pointer (RFC 6901) into the case
 * @param words the same for people, such as "tooth 41" or "visit 2, left"; empty for the case as a whole
 */
public record Place(String pointer, String words) {
    /** The case as a whole. */
    public static final Place CASE = new Place("", "");
}
