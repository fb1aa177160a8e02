package dev.fairlead.rules.verdict;

import dev.fairlead.facts.CaseFact;
import java.util.Comparator;

/** The order of places: by pointer with numbers as numbers, so that visit 10 comes after visit 2; then by words. */
final class PlaceOrder {
    static final Comparator<CaseFact> FACTS = PlaceOrder::facts;

    private PlaceOrder() {}

    private static int facts(CaseFact a, CaseFact b) {
        int order = a.getClass() == b.getClass()
                ? 0
                : a.getClass().getName().compareTo(b.getClass().getName());
        order = order != 0 ? order : naturally(a.place().pointer(), b.place().pointer());
        return order != 0 ? order : a.place().words().compareTo(b.place().words());
    }

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
                if (endA - i != endB - j) {
                    return Integer.compare(endA - i, endB - j);
                }
                while (i < endA && a.charAt(i) == b.charAt(j)) {
                    i++;
                    j++;
                }
                if (i < endA) {
                    return Character.compare(a.charAt(i), b.charAt(j));
                }
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
