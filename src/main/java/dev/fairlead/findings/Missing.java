package dev.fairlead.findings;

/**
 * A fact that is missing.
 *
 * @param pointer JSON Pointer (RFC 6901) of where it would stand in the case
 * @param words the same for people
 */
public record Missing(String pointer, String words) {
    /** The missing fact at {@code pointer}, with its words. */
    public static Missing of(String pointer) {
        return new Missing(pointer, Words.of(pointer));
    }
}
