package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the conditions of rules from their DRL; apart from them, since a start with prepared rules needs no pattern of
 * it.
 */
final class DrlTerms {
    private static final Pattern COMMENT = Pattern.compile("//[^\\n]*|(?s:/\\*.*?\\*/)");
    private static final Pattern WHEN =
            Pattern.compile("^\\s*when\\b(.*?)^\\s*then\\b", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern WRITTEN =
            Pattern.compile("(\\w+)\\s*\\.\\s*(known|doesNotApply|yes|no|atMost|above|atLeast|below)\\s*\\("
                    + "\\s*(?:limits\\s*\\.\\s*of\\s*\\(\\s*\"([^\"]*)\"\\s*\\)\\s*)?\\)");

    private DrlTerms() {}

    /** The conditions in a checked DRL text on {@code about}, each once, in the order of the text. */
    static List<Term> in(String drl, Class<? extends CaseFact> about) {
        Set<Term> terms = new LinkedHashSet<>();
        Matcher when = WHEN.matcher(COMMENT.matcher(drl).replaceAll(" "));
        while (when.find()) {
            terms.addAll(written(when.group(1), about));
        }
        return List.copyOf(terms);
    }

    /** The conditions in one piece of a rule's left-hand side. */
    static List<Term> written(String condition, Class<? extends CaseFact> about) {
        List<Term> terms = new ArrayList<>();
        Matcher m = WRITTEN.matcher(condition);
        while (m.find()) {
            Need need = Need.of(about, m.group(1));
            if (need == null) {
                throw new IllegalStateException(about.getSimpleName() + " has no " + m.group(1));
            }
            terms.add(new Term(need, Term.Kind.valueOf(upper(m.group(2))), m.group(3) == null ? "" : m.group(3)));
        }
        return terms;
    }

    /** A name as Java writes methods, as Java writes constants. */
    static String upper(String method) {
        return method.replaceAll("(?=[A-Z])", "_").toUpperCase(Locale.ROOT);
    }
}
