package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import java.util.Comparator;

/** The order of places: by pointer with numbers as numbers, so that visit 10 comes after visit 2; then by words. */
final class PlaceOrder {
    static final Comparator<CaseFact> FACTS = Comparator.comparing((CaseFact f) -> f.getClass().getName())
            .thenComparing(f -> f.place().pointer(), PlaceOrder::naturally)
            .thenComparing(f -> f.place().words());

    private PlaceOrder() {}

    /** Compares texts; runs of digits compare by their number. */
    static int naturally(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            char c = a.charAt(i);
            char d = b.charAt(j);
            if (digit(c) && digit(d)) {
                int endA = endOfDigits(a, i);
                int endB = endOfDigits(b, j);
                int order = endA - i != endB - j ? Integer.compare(endA - i, endB - j)
                        : a.substring(i, endA).compareTo(b.substring(j, endB));
                if (order != 0) {
                    return order;
                }
                i = endA;
                j = endB;
            } else if (c != d) {
                return Character.compare(c, d);
            } else {
                i++;
                j++;
            }
        }
        return Integer.compare(a.length() - i, b.length() - j);
    }

    private static int endOfDigits(String s, int from) {
        int end = from;
        while (end < s.length() && digit(s.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
