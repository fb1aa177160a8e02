package dev.fairlead.findings;

import dev.fairlead.rules.catalogue.Status;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Joins what is seen at several places into one text; places that show the same are named together. */
final class SeenText {
    private static final int NAMED = 6;

    private SeenText() {}

    static String over(List<PlaceFinding> places) {
        if (places.size() == 1) {
            PlaceFinding only = places.get(0);
            return sentence(only.text(), List.of(only.words()));
        }
        List<String> sentences = new ArrayList<>();
        for (Status status : Status.values()) {
            Map<String, List<String>> byText = new LinkedHashMap<>();
            for (PlaceFinding p : places) {
                if (p.outcome() == status) {
                    byText.computeIfAbsent(p.text(), t -> new ArrayList<>()).add(p.words());
                }
            }
            for (Map.Entry<String, List<String>> same : byText.entrySet()) {
                sentences.add(sentence(same.getKey(), same.getValue()));
            }
        }
        return String.join(" ", sentences);
    }

    static String missing(List<Missing> missing) {
        return "not assessed, " + Missing.line(missing, NAMED);
    }

    private static String sentence(String text, List<String> words) {
        String where = where(words);
        String full = where.isEmpty() || named(words, text) ? text : where + ": " + text;
        return full.substring(0, 1).toUpperCase(Locale.ROOT) + full.substring(1) + (full.endsWith(".") ? "" : ".");
    }

    private static String where(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** True when a text names one of the places itself. */
    private static boolean named(List<String> words, String text) {
        for (String w : words) {
            if (!w.isEmpty() && text.contains(w)) {
                return true;
            }
        }
        return false;
    }
}
