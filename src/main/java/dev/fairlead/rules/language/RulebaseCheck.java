package dev.fairlead.rules.language;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Reason;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Checks texts and DRL of a rulebase without compiling anything: that all can be filled, and nothing else is said. */
public final class RulebaseCheck {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

    private RulebaseCheck() {}

    /** The catalogue of {@code files}; throws with every problem of texts, or of DRL, when there are any. */
    public static Catalogue check(RuleFiles files) {
        Catalogue catalogue = CatalogueReader.read(files);
        List<String> problems = texts(catalogue);
        for (Criterion c : catalogue.criteria()) {
            String drl = Objects.requireNonNull(files.text(c.drl()), c.drl());
            problems.addAll(DrlLint.problems(c, drl, catalogue));
        }
        RulebaseException.throwIfAny(problems);
        return catalogue;
    }

    /** Every placeholder that cannot be filled, and every text that is not there. */
    private static List<String> texts(Catalogue catalogue) {
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
