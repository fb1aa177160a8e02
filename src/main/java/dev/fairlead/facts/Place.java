package dev.fairlead.facts;

/**
 * Where in a case something stands; in order by pointer with numbers as numbers, so that visit 10 comes after visit 2,
 * then by words.
 *
 * @param pointer JSON Pointer (RFC 6901) into the case
 * @param words the same for people, such as "tooth 41" or "visit 2, left"; empty for the case as a whole
 */
public record Place(String pointer, String words) implements Comparable<Place> {
    /** The case as a whole. */
    public static final Place CASE = new Place("", "");

    @Override
    public int compareTo(Place other) {
        int order = naturally(pointer, other.pointer);
        return order != 0 ? order : words.compareTo(other.words);
    }

    /** Compares texts; where they part within a number, the one with more digits is greater. */
    private static int naturally(String a, String b) {
        int at = 0;
        while (at < a.length() && at < b.length() && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        int digits = digits(a, at);
        int others = digits(b, at);
        boolean number = at > 0 && digits(a, at - 1) > 0 || digits > 0 && others > 0;
        return number && digits != others ? Integer.compare(digits, others) : a.compareTo(b);
    }

    /** How many digits stand in a row from there. */
    private static int digits(String s, int from) {
        int end = from;
        while (end < s.length() && s.charAt(end) >= '0' && s.charAt(end) <= '9') {
            end++;
        }
        return end - from;
    }
}
