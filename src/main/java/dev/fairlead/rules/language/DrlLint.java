package dev.fairlead.rules.language;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Holds the DRL of a criterion to the small language that criteria are written in: one fact, positive conditions,
 * thresholds by name, and verdicts as the only consequence. Everything else could pass on an absent fact, hide a
 * number, or do what no rule should do.
 */
final class DrlLint {
    static final Pattern COMMENT = Pattern.compile("//[^\\n]*|(?s:/\\*.*?\\*/)");
    static final Pattern RULE = Pattern.compile(
            "^\\s*rule\\s+\"([^\"]*)\"(.*?)^\\s*when\\b(.*?)^\\s*then\\b(.*?)^\\s*end\\b",
            Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern HEAD = Pattern.compile("(package|import|global)\\s+([\\w.]+)(?:\\s+(\\w+))?\\s*;?");
    private static final Pattern STRING = Pattern.compile("\"[^\"]*\"");
    private static final Pattern NEGATIVE = Pattern.compile(
            "!|(?<!\\|)\\|(?!\\|)|(?<![\\w$])\\d|\\b(not|exists|forall|eval|from|accumulate|collect|null|new)\\b");
    static final Pattern FACT = Pattern.compile("\\s*\\$f\\s*:\\s*(\\w+)\\s*\\((.*)\\)\\s*", Pattern.DOTALL);
    private static final Pattern TERM = Pattern.compile(
            "\\s*(\\w+)\\s*\\.\\s*(\\w+)\\(\\s*(limits\\s*\\.\\s*of\\(\\s*\"[^\"]*\"\\s*\\)\\s*)?\\)\\s*");
    private static final Pattern LIMIT = Pattern.compile("\\blimits\\s*\\.\\s*of\\s*\\(\\s*\"([^\"]*)\"\\s*\\)");
    static final Pattern CALL = Pattern.compile(
            "\\s*verdicts\\.(pass|caution|stop|doesNotApply)\\(\\s*\"([^\"]*)\"\\s*,\\s*\\$f\\s*"
                    + "(?:,\\s*\"([^\"]*)\"\\s*)?\\)((?:\\s*\\.seen\\(\\s*\"[^\"]*\"\\s*,\\s*\\$f\\.\\w+\\(\\)\\s*\\))*)\\s*;\\s*");
    private static final Pattern SEEN = Pattern.compile("\\.seen\\(\\s*\"([^\"]*)\"\\s*,\\s*\\$f\\.(\\w+)");

    private static final Set<String> GLOBALS =
            Set.of(Limits.class.getName() + " limits", Verdicts.class.getName() + " verdicts");
    private static final String NOT_NEEDED = " does not stand among the needs of the criterion";

    private final String path;
    private final String text;
    private final Criterion criterion;
    private final Catalogue catalogue;
    private final List<String> problems = new ArrayList<>();

    private DrlLint(String path, String text, Criterion criterion, Catalogue catalogue) {
        this.path = path;
        this.text = blank(COMMENT, text);
        this.criterion = criterion;
        this.catalogue = catalogue;
    }

    /** All that is wrong with the DRL of a criterion, by file and line. */
    static List<String> problems(Criterion criterion, String text, Catalogue catalogue) {
        DrlLint lint = new DrlLint(criterion.drl(), text, criterion, catalogue);
        lint.file();
        return lint.problems;
    }

    private void file() {
        Matcher rule = RULE.matcher(text);
        int end = 0;
        boolean passes = false;
        boolean warns = false;
        while (rule.find()) {
            head(text.substring(end, rule.start()), end);
            end = rule.end();
            if (!rule.group(1).startsWith(criterion.id() + ": ")) {
                add(rule.start(), "the name of a rule begins with \"" + criterion.id() + ": \"");
            }
            if (!rule.group(2).isBlank()) {
                add(rule.start(2), "a rule has no attributes (" + rule.group(2).strip() + ")");
            }
            condition(rule.group(3), rule.start(3));
            String verdict = consequence(rule.group(4), rule.start(4));
            passes |= "pass".equals(verdict);
            warns |= "caution".equals(verdict) || "stop".equals(verdict);
        }
        head(text.substring(end), end);
        if (!passes || !warns) {
            problems.add(path + ": needs at least one rule that passes and one that warns");
        }
    }

    /** What stands outside rules: package, imports of facts, the two globals, and nothing more. */
    private void head(String part, int offset) {
        Matcher m = HEAD.matcher(part);
        while (m.find()) {
            String name = m.group(2);
            switch (m.group(1)) {
                case "package" -> {
                    String expected =
                            "dev.fairlead.rulebase." + criterion.stage().word();
                    if (!name.equals(expected)) {
                        add(offset + m.start(), "the package is " + expected);
                    }
                }
                case "import" -> {
                    if (!name.startsWith("dev.fairlead.facts.")) {
                        add(offset + m.start(), "rules may import facts alone, not " + name);
                    }
                }
                default -> {
                    if (!GLOBALS.contains(name + " " + m.group(3))) {
                        add(offset + m.start(), "the globals are limits and verdicts");
                    }
                }
            }
        }
        String rest = blank(HEAD, part);
        if (!rest.isBlank()) {
            add(
                    offset + rest.indexOf(rest.strip()),
                    "only package, imports, globals and rules are allowed, not: " + firstLine(rest));
        }
    }

    private void condition(String when, int offset) {
        Matcher limit = LIMIT.matcher(when);
        while (limit.find()) {
            knownLimit(limit.group(1), offset + limit.start());
        }
        Matcher negative = NEGATIVE.matcher(blank(STRING, when));
        boolean plain = true;
        while (negative.find()) {
            plain = false;
            add(
                    offset + negative.start(),
                    negative.group().matches("\\d")
                            ? "a number in a condition: give it a name among the thresholds"
                            : "a condition must be positive and plain: \"" + negative.group()
                                    + "\" could hold for a missing fact");
        }
        Matcher fact = FACT.matcher(when);
        if (!plain) {
            return;
        }
        if (!fact.matches()) {
            add(
                    offset + when.length() - when.stripLeading().length(),
                    "a condition looks at one fact, written $f : "
                            + criterion.about().getSimpleName() + "( ... )");
        } else if (!fact.group(1).equals(criterion.about().getSimpleName())) {
            add(
                    offset + fact.start(1),
                    "the criterion is about " + criterion.about().getSimpleName() + ", not " + fact.group(1));
        } else {
            Matcher term = Pattern.compile("[^,|]+").matcher(fact.group(2));
            while (term.find()) {
                term(term.group(), offset + fact.start(2) + term.start());
            }
        }
    }

    private void term(String written, int at) {
        Matcher m = TERM.matcher(written);
        int start = at + written.length() - written.stripLeading().length();
        if (!m.matches()) {
            add(
                    start,
                    "a condition is a component and one of known, yes, no, doesNotApply, atMost, above, atLeast, below"
                            + " with a threshold by name, not: " + firstLine(written));
            return;
        }
        Need need = Need.of(criterion.about(), m.group(1));
        boolean answer = m.group(2).matches("yes|no");
        boolean quantity = m.group(2).matches("atMost|above|atLeast|below");
        if (!answer && !quantity && !m.group(2).matches("known|doesNotApply")) {
            add(start, m.group(2) + " is no condition that rules may use");
            return;
        }
        if (need != null && !needed(need)) {
            add(start, m.group(1) + NOT_NEEDED);
        }
        if (need == null) {
            add(start, criterion.about().getSimpleName() + " has no " + m.group(1) + " that could be known or missing");
        } else if (answer && need.type() != Answer.class || quantity && need.type() != Measured.class) {
            add(start, m.group(1) + " is a " + need.type().getSimpleName() + ": it has no " + m.group(2));
        } else if (quantity != (m.group(3) != null)) {
            add(start, m.group(2) + (quantity ? " takes a threshold by name" : " takes nothing"));
        }
    }

    private boolean needed(@Nullable Need need) {
        return need != null && criterion.needs().stream().anyMatch(n -> n.at() == need.at());
    }

    /** The one verdict of a rule; null when it is not one. */
    private @Nullable String consequence(String then, int offset) {
        Matcher call = CALL.matcher(then);
        if (!call.matches()) {
            add(
                    offset + then.length() - then.stripLeading().length(),
                    "a consequence is one verdict: verdicts.pass|caution|stop|doesNotApply(...).seen(...)");
            return null;
        }
        if (!call.group(2).equals(criterion.id())) {
            add(offset + call.start(2), "the verdict is on " + criterion.id() + ", not " + call.group(2));
        }
        String reason = call.group(3);
        boolean exemption = call.group(1).equals("doesNotApply");
        boolean known = call.group(1).equals("pass")
                ? reason == null
                : reason != null && (exemption ? criterion.exemptions() : criterion.reasons()).containsKey(reason);
        Reason warned = exemption || reason == null ? null : criterion.reasons().get(reason);
        if (!known) {
            add(
                    offset + call.start(1),
                    reason == null
                            ? "the reason is missing"
                            : call.group(1) + ": there is no text for \"" + reason + "\"");
        }
        String said = call.group(1).equals("pass")
                ? criterion.passes()
                : warned != null ? warned.says() : criterion.exemptions().getOrDefault(reason, "");
        if (warned != null && warned.stop() != call.group(1).equals("stop")) {
            add(offset + call.start(1), call.group(1) + ": the texts give \"" + reason + "\" another weight");
        }
        if (call.group(4).isBlank() && TextCheck.speaksOfValue(said)) {
            add(
                    offset + call.start(1),
                    "the text speaks of a value and its limit: add .seen(\"threshold\", $f.component())");
        }
        Matcher seen = SEEN.matcher(call.group(4));
        while (seen.find()) {
            knownLimit(seen.group(1), offset + call.start(4) + seen.start());
            if (!needed(Need.of(criterion.about(), seen.group(2)))) {
                add(offset + call.start(4) + seen.start(2), seen.group(2) + NOT_NEEDED);
            }
        }
        return call.group(1);
    }

    private void knownLimit(String name, int at) {
        if (!catalogue.thresholds().containsKey(name)) {
            add(at, "no threshold is called " + name);
        } else if (!criterion.limits().contains(name)) {
            add(at, name + " belongs to another criterion: \"asks\" has to name {" + name + "}");
        }
    }

    private void add(int at, String problem) {
        long line = 1
                + text.substring(0, Math.min(at, text.length()))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
        problems.add(path + ":" + line + ": " + problem);
    }

    /** Blanks out what matches, and keeps line breaks so that positions stay true. */
    private static String blank(Pattern pattern, String text) {
        return pattern.matcher(text).replaceAll(m -> m.group().replaceAll("[^\\n]", " "));
    }

    private static String firstLine(String text) {
        return text.strip().lines().findFirst().orElse("");
    }
}
