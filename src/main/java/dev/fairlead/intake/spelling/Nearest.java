package dev.fairlead.intake.spelling;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known word that somebody probably meant. */
public final class Nearest {
    private static final double ALIKE = 0.88;

    private Nearest() {}

    /**
     * The nearest of {@code known}, when it is near enough to be a slip of the pen; capitals, dashes and gaps are
     * passed over.
     */
    public static Optional<String> of(String word, Collection<String> known) {
        if (word.length() > 60) {
            return Optional.empty();
        }
        String bare = bare(word);
        return known.stream()
                .filter(k -> alike(bare, bare(k)))
                .min(Comparator.comparingInt((String k) ->
                                LevenshteinDistance.getDefaultInstance().apply(bare, bare(k)))
                        .thenComparing(k -> k));
    }

    private static boolean alike(String a, String b) {
        int most = Math.max(1, Math.max(a.length(), b.length()) / 4);
        return !a.isEmpty()
                && (LevenshteinDistance.getDefaultInstance().apply(a, b) <= most
                        || new JaroWinklerSimilarity().apply(a, b) >= ALIKE);
    }

    private static String bare(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[-_ .]", "");
    }
}
