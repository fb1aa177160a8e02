package dev.fairlead.rules.catalogue;

/**
 * An entry of the bibliography.
 *
 * @param key by which criteria refer to it
 * @param citation as printed
 * @param kind how far it can be relied on
 */
public record Source(String key, String citation, Kind kind) {
    /** How far a source can be relied on. */
    public enum Kind {
        PUBLISHED,
        /** A published text that was not read: what it says is taken from another one. */
        PUBLISHED_SECOND_HAND,
        STANDARD,
        COMMON_PRACTICE,
        FROM_MEMORY,
        COMPUTED
    }
}
