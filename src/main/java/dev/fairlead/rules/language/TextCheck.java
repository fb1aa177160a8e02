package dev.fairlead.rules.language;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Reason;
import dev.fairlead.rules.catalogue.RuleFiles;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Checks that every placeholder in the texts of a catalogue can be filled. */
final class TextCheck {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

    private TextCheck() {}

    static List<String> problems(Catalogue catalogue) {
        List<String> problems = new ArrayList<>();
        for (Criterion c : catalogue.criteria()) {
            String path = c.folder() + "/" + RuleFiles.TEXTS + ": ";
            Set<String> general = new HashSet<>(catalogue.thresholds().keySet());
            general.addAll(c.thresholds().keySet());
            for (String text : List.of(c.asks(), c.why())) {
                check(path, text, general, problems);
            }
            for (String text : List.of(c.title(), c.dispute())) {
                check(path, text, Set.of(), problems);
            }
            Set<String> here = new HashSet<>(general);
            here.addAll(List.of("value", "-value", "limit", "place"));
            // a component, or its value with the opposite sign
            c.needs().forEach(n -> here.addAll(Set.of(n.component(), "-" + n.component())));
            check(path, c.passes(), here, problems);
            for (Reason r : c.reasons().values()) {
                check(path, r.title(), Set.of(), problems);
                check(path, r.says(), here, problems);
                check(path, r.todo(), general, problems);
            }
            c.exemptions().values().forEach(text -> check(path, text, here, problems));
        }
        return problems;
    }

    /** True when a text speaks of the value that a verdict saw, or of its limit. */
    static boolean speaksOfValue(String text) {
        return text.matches(".*value[}|].*") || text.contains("{limit}");
    }

    private static void check(String path, String text, Set<String> known, List<String> problems) {
        Matcher m = PLACEHOLDER.matcher(text);
        while (m.find()) {
            // words by sign stand behind a bar, the ends of a span on both sides of two dots
            String filled = m.group(1).replaceFirst("\\|.*", "");
            if (!known.containsAll(List.of(filled.split("\\.\\.")))) {
                problems.add(path + "nothing fills {" + m.group(1) + "} in \"" + text + "\"");
            }
        }
        if (text.isBlank() && !known.isEmpty()) {
            problems.add(path + "a text is empty");
        }
    }
}
