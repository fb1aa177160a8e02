package dev.fairlead.intake.spelling;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What people write for a word of the format: the first letter, the numeral of a class, the trade's short name. */
public final class Abbreviations {
    private static final Set<String> YES = Set.of("y", "yes", "true", "ja", "j", "oui", "si", "sí", "x", "✓");
    private static final Set<String> NO = Set.of("n", "no", "false", "nein", "non");
    private static final Set<String> OPEN = Set.of("", "?", "??", "-", "–", "n/a", "na", "none", "nil", "tbd", "null");
    /** Names of measurements of the lateral head film as they are read out, and the fields that hold them. */
    private static final Map<String, String> FIELDS = Map.of(
            "impa", "incisorMandibular",
            "l1mp", "incisorMandibular",
            "l1gome", "incisorMandibular",
            "fma", "mandibularPlane",
            "fmpa", "mandibularPlane",
            "l1apog", "incisorToAPog",
            "l1apo", "incisorToAPog",
            "oj", "overjet",
            "ob", "overbite");

    private Abbreviations() {}

    /** The answer that was meant. */
    public static Optional<String> answer(String word) {
        String bare = word.strip().toLowerCase(Locale.ROOT);
        return YES.contains(bare)
                ? Optional.of("yes")
                : NO.contains(bare)
                        ? Optional.of("no")
                        : OPEN.contains(bare) ? Optional.of("unknown") : Optional.empty();
    }

    /** The words of a closed list that may have been meant: one, a few, or none. */
    public static List<String> choice(String word, Collection<String> known) {
        String bare = bare(word);
        if (OPEN.contains(word.strip().toLowerCase(Locale.ROOT))) {
            return known.contains("none") && bare.equals("none") ? List.of("none") : List.of("unknown");
        }
        List<String> whole = known.stream()
                .filter(k -> bare(k).equals(bare)
                        || bare(k.substring(k.lastIndexOf('-') + 1)).equals(bare))
                .toList();
        if (whole.size() == 1) {
            return whole;
        }
        Optional<String> near = Nearest.of(word, known);
        if (near.isPresent()) {
            return List.of(near.get());
        }
        List<String> part = known.stream()
                .filter(k ->
                        !bare.isEmpty() && (bare(k).startsWith(bare) || bare.length() > 2 && bare(k).contains(bare)))
                .toList();
        return part.size() <= 3 ? part : List.of();
    }

    /** The field that holds what the trade calls so. */
    public static Optional<String> field(String key, Collection<String> known) {
        return Optional.ofNullable(FIELDS.get(bare(key))).filter(known::contains);
    }

    /** A sentence of a field as it goes on within another: without a capital and without its full stop. */
    public static String within(String sentence) {
        String open = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        boolean word = open.length() > 1 && Character.isLowerCase(open.charAt(1)) || open.startsWith("A ");
        return word ? open.substring(0, 1).toLowerCase(Locale.ROOT) + open.substring(1) : open;
    }

    private static String bare(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
