package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Knowable;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One condition that rules put on one component of a fact.
 *
 * @param need the component
 * @param kind what is asked of it
 * @param limit full name of the threshold that a quantity is held against; empty for other kinds
 */
public record Term(Need need, Kind kind, String limit) {
    /** What can be asked of a component. */
    public enum Kind {
        KNOWN, DOES_NOT_APPLY, YES, NO, AT_MOST, ABOVE, AT_LEAST, BELOW;

        /** True for a quantity held against a threshold. */
        public boolean compares() {
            return ordinal() >= AT_MOST.ordinal();
        }
    }

    private static final Pattern COMMENT = Pattern.compile("//[^\\n]*|(?s:/\\*.*?\\*/)");
    private static final Pattern WHEN = Pattern.compile("^\\s*when\\b(.*?)^\\s*then\\b", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern WRITTEN = Pattern.compile("(\\w+)\\s*\\.\\s*(known|doesNotApply|yes|no|atMost|above|atLeast|below)\\s*\\("
            + "\\s*(?:limits\\s*\\.\\s*of\\s*\\(\\s*\"([^\"]*)\"\\s*\\)\\s*)?\\)");

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
            terms.add(new Term(need, Kind.valueOf(upper(m.group(2))), m.group(3) == null ? "" : m.group(3)));
        }
        return terms;
    }

    /** A name as Java writes methods, as Java writes constants. */
    static String upper(String method) {
        return method.replaceAll("(?=[A-Z])", "_").toUpperCase(Locale.ROOT);
    }

    /** Whether it holds for a fact under these thresholds. */
    boolean holds(CaseFact fact, Limits limits) {
        return holds(kind, need.of(fact), kind.compares() ? limits.of(limit) : null);
    }

    /** Whether a condition of this kind holds for a component; {@code limit} is null where it takes none. */
    static boolean holds(Kind kind, Knowable k, Limit limit) {
        return switch (kind) {
            case KNOWN -> k.known();
            case DOES_NOT_APPLY -> k.doesNotApply();
            case YES -> ((Answer) k).yes();
            case NO -> ((Answer) k).no();
            case AT_MOST -> ((Measured) k).atMost(limit);
            case ABOVE -> ((Measured) k).above(limit);
            case AT_LEAST -> ((Measured) k).atLeast(limit);
            case BELOW -> ((Measured) k).below(limit);
        };
    }
}
