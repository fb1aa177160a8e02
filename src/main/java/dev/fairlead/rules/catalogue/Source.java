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

    /** The citation up to its first full stop, comma after a year, or what it says of itself in brackets. */
    public String shortly() {
        String words = switch (kind) {
            case COMMON_PRACTICE -> "common practice, no source";
            case COMPUTED -> citation.replaceFirst("[.;].*$", "");
            default ->
                citation.replaceFirst("(?<=\\d{4})[,:;( ].*$", "")
                        .replaceFirst("[.,;(].*$", "")
                        .strip();
        };
        return words.startsWith("Recalled")
                ? "from memory"
                : kind == Kind.FROM_MEMORY && !words.contains("memory") ? words + " (from memory)" : words;
    }
}
