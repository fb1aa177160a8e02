package dev.fairlead.findings;

import dev.fairlead.rules.Status;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Joins what is seen at several places into one text; places that show the same are named together. */
final class SeenText {
    private static final int NAMED = 6;

    private SeenText() {}

    static String over(List<PlaceFinding> places) {
        List<String> sentences = new ArrayList<>();
        for (Status status : Status.values()) {
            Map<String, List<String>> byText = new LinkedHashMap<>();
            places.stream().filter(p -> p.outcome() == status)
                    .forEach(p -> byText.computeIfAbsent(p.text(), t -> new ArrayList<>()).add(p.words()));
            byText.forEach((text, words) -> sentences.add(sentence(text, words, status)));
        }
        return String.join(" ", sentences);
    }

    static String missing(List<Missing> missing) {
        List<String> words = missing.stream().map(Missing::words).toList();
        List<String> named = words.size() <= NAMED ? words : words.subList(0, NAMED);
        return "not assessed, missing: " + String.join("; ", named) + (words.size() > NAMED ? "; and " + (words.size() - NAMED) + " more" : "");
    }

    private static String sentence(String text, List<String> words, Status status) {
        String where = String.join(" and ", words.size() <= 2 ? words
                : List.of(String.join(", ", words.subList(0, words.size() - 1)), words.get(words.size() - 1)));
        boolean named = !where.isEmpty() && words.stream().noneMatch(w -> !w.isEmpty() && text.contains(w));
        String full = named ? where + ": " + text : text;
        return full.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + full.substring(1) + (full.endsWith(".") ? "" : ".");
    }
}
