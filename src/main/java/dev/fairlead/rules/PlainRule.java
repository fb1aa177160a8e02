package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule of a DRL file as data: all of its conditions on its one fact, and its verdict. The engine runs it without a
 * class of its own.
 *
 * @param name as the file has it
 * @param when conditions, all of which must hold
 * @param outcome the verdict
 * @param reason key of the reason or exemption; empty for a pass
 * @param seen values that the verdict shows
 */
public record PlainRule(String name, List<Condition> when, Outcome outcome, String reason, List<Shown> seen) {
    /**
     * A condition: component of the fact, what is asked of it, and the full name of the threshold; empty where it takes
     * none.
     */
    public record Condition(String component, Term.Kind kind, String limit) {}

    /** A value of the fact beside the full name of the threshold that it was held against. */
    public record Shown(String limit, String component) {}

    private static final Pattern ANY_OF = Pattern.compile("\\|\\|");
    private static final Pattern SEEN =
            Pattern.compile("\\.seen\\(\\s*\"([^\"]*)\"\\s*,\\s*\\$f\\.(\\w+)\\(\\)\\s*\\)");

    public PlainRule {
        when = List.copyOf(when);
        seen = List.copyOf(seen);
    }

    /**
     * The rules of a DRL text that the check of rulebases lets pass; empty when one of them has alternatives, which
     * only the engine's own compiler takes.
     */
    public static List<PlainRule> in(String drl, Class<? extends CaseFact> about) {
        List<PlainRule> rules = new ArrayList<>();
        Matcher rule = DrlLint.RULE.matcher(DrlLint.COMMENT.matcher(drl).replaceAll(" "));
        while (rule.find()) {
            Matcher fact = DrlLint.FACT.matcher(rule.group(3));
            Matcher call = DrlLint.CALL.matcher(rule.group(4));
            if (!fact.matches() || !call.matches()) {
                throw new IllegalStateException("not a checked rule: " + rule.group(1));
            }
            if (ANY_OF.matcher(fact.group(2)).find()) {
                return List.of();
            }
            rules.add(new PlainRule(
                    rule.group(1),
                    conditions(fact.group(2), about),
                    Outcome.valueOf(DrlTerms.upper(call.group(1))),
                    call.group(3) == null ? "" : call.group(3),
                    seen(call.group(4))));
        }
        return rules;
    }

    private static List<Condition> conditions(String written, Class<? extends CaseFact> about) {
        List<Condition> all = new ArrayList<>();
        for (String part : written.split(",")) {
            List<Term> terms = DrlTerms.written(part, about);
            if (terms.size() != 1) {
                throw new IllegalStateException("not one condition: " + part);
            }
            Term t = terms.get(0);
            all.add(new Condition(t.need().component(), t.kind(), t.limit()));
        }
        return all;
    }

    private static List<Shown> seen(String written) {
        return SEEN.matcher(written)
                .results()
                .map(m -> new Shown(m.group(1), m.group(2)))
                .toList();
    }
}
