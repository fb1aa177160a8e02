package dev.fairlead.rules.catalogue;

/**
 * An entry of the bibliography.
 *
 * @param key by which criteria refer to it
 * @param citation as printed
 * @param kind how far it can be relied on
 * @param named authors and year, or what else it is called in a line
 */
public record Source(String key, String citation, Kind kind, String named) {
    /** How far a source can be relied on. */
    public enum Kind {
        PUBLISHED,
        /** A published text that was not read: what it says is taken from another one. */
        PUBLISHED_SECOND_HAND,
        STANDARD,
        COMMON_PRACTICE,
        /** A limit set by this project, in no text and no custom. */
        OWN_CHOICE,
        FROM_MEMORY,
        COMPUTED
    }
}
