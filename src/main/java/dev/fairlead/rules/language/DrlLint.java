package dev.fairlead.rules.language;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Limits;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Reason;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Holds the DRL of a criterion to the small language that criteria are written in: one fact, positive conditions,
 * thresholds by name, and verdicts as the only consequence. Everything else could pass on an absent fact, hide a
 * number, or do what no rule should do.
 */
final class DrlLint {
    /** A text between quotes comes first, as for the engine: what looks like a comment in it is none. */
    private static final Pattern COMMENT = Pattern.compile("\"[^\"]*\"|(//[^\\n]*|(?s:/\\*.*?\\*/))");

    private static final Pattern RULE = Pattern.compile(
            "^\\s*rule\\s+\"([^\"]*)\"(.*?)^\\s*when\\b(.*?)^\\s*then\\b(.*?)^\\s*end\\b",
            Pattern.DOTALL | Pattern.MULTILINE);
    /** In a comment too: Java reads what a backslash makes, and the engine ends a line where the lint does not. */
    private static final Pattern NEVER = Pattern.compile("[\\p{C}\\p{Z}\\\\&&[^ \\t\\r\\n]]|\\r(?!\\n)");

    private static final Pattern STRING = Pattern.compile("\"[^\"]*\"");
    private static final Pattern NEGATIVE = Pattern.compile(
            "!|(?<!\\|)\\|(?!\\|)|(?<![\\w$])\\d|\\b(not|exists|forall|eval|from|accumulate|collect|null|new)\\b");
    private static final Pattern FACT = Pattern.compile("\\s*\\$f\\s*:\\s*(\\w+)\\s*\\((.*)\\)\\s*", Pattern.DOTALL);
    private static final Pattern TERM = Pattern.compile("[^,|]+");
    private static final Pattern ASKED = Pattern.compile("\\s*(\\w+)\\s*\\.\\s*(?:(known|doesNotApply|yes|no)\\(\\s*\\)"
            + "|(atMost|above|atLeast|below)\\(\\s*limits\\s*\\.\\s*of\\(\\s*\"[^\"]*\"\\s*\\)\\s*\\))\\s*");
    private static final Pattern LIMIT = Pattern.compile("\\blimits\\s*\\.\\s*of\\s*\\(\\s*\"([^\"]*)\"\\s*\\)");
    private static final Pattern CALL = Pattern.compile(
            "\\s*verdicts\\.(pass|caution|stop|doesNotApply)\\(\\s*\"([^\"]*)\"\\s*,\\s*\\$f\\s*"
                    + "(?:,\\s*\"([^\"]*)\"\\s*)?\\)((?:\\s*\\.seen\\(\\s*\"[^\"]*\"\\s*,\\s*\\$f\\.\\w+\\(\\)\\s*\\))*)\\s*;\\s*");
    private static final Pattern SEEN = Pattern.compile("\\.seen\\(\\s*\"([^\"]*)\"\\s*,\\s*\\$f\\.(\\w+)");

    private static final Pattern LINE = Pattern.compile("\\S.*");

    private static final String NOT_NEEDED = " does not stand among the needs of the criterion";

    private final Criterion criterion;
    private final String about;
    private final Catalogue catalogue;
    /** Without comments; all places are counted in it, and what was blanked out has kept its room. */
    private final String text;

    private final List<String> problems = new ArrayList<>();

    private DrlLint(Criterion criterion, String text, Catalogue catalogue) {
        this.criterion = criterion;
        this.about = criterion.about().getSimpleName();
        this.catalogue = catalogue;
        this.text = COMMENT.matcher(text)
                .replaceAll(m -> Matcher.quoteReplacement(m.group(1) == null ? m.group() : spaces(m.group())));
    }

    /** All that is wrong with the DRL of a criterion, by file and line. */
    static List<String> problems(Criterion criterion, String text, Catalogue catalogue) {
        DrlLint lint = new DrlLint(criterion, text, catalogue);
        NEVER.matcher(text)
                .results()
                .forEach(m -> lint.tell(
                        m.start(),
                        String.format(
                                "a character that no rule is written with: U+%04X",
                                (int) m.group().charAt(0))));
        lint.file();
        return lint.problems;
    }

    private void file() {
        Matcher rule = RULE.matcher(text);
        Set<String> verdicts = new HashSet<>();
        int end = 0;
        while (rule.find()) {
            head(end, rule.start());
            end = rule.end();
            String name = criterion.id() + ": ";
            hold(rule.group(1).startsWith(name), rule.start(), "the name of a rule begins with \"" + name + "\"");
            String attributes = rule.group(2).strip();
            hold(attributes.isEmpty(), rule.start(2), "a rule has no attributes (" + attributes + ")");
            condition(rule.start(3), rule.end(3));
            verdicts.add(consequence(rule.start(4), rule.end(4)));
        }
        head(end, text.length());
        if (!verdicts.contains("pass") || !verdicts.contains("caution") && !verdicts.contains("stop")) {
            problems.add(criterion.drl() + ": needs at least one rule that passes and one that warns");
        }
    }

    private Matcher find(Pattern pattern, int from, int to) {
        return pattern.matcher(text).region(from, to);
    }

    /** What stands outside rules: package, import of the fact, the two globals, and nothing more. */
    private void head(int from, int to) {
        String home = "package dev.fairlead.rulebase." + criterion.stage().word();
        String fact = "import " + criterion.about().getName();
        String limits = "global " + Limits.class.getName() + " limits";
        String verdicts = "global " + Verdicts.class.getName() + " verdicts";
        Pattern allowed = Pattern.compile(Stream.of(home, fact, limits, verdicts)
                .map(line -> line.replace(".", "\\.").replace(" ", "\\s+"))
                .collect(Collectors.joining("|", "(?:", ")(?![\\w.])\\s*;?")));
        Matcher line = LINE.matcher(blank(allowed, text.substring(from, to)));
        boolean more = true;
        while (more && line.find()) {
            String found = line.group().strip();
            add(
                    from + line.start(),
                    "only " + home + ", " + fact + ", the globals limits and verdicts, and rules are allowed, not: "
                            + found);
            // what cannot be read at all would go on for lines
            more = found.matches("(package|import|global)\\b.*");
        }
    }

    private void condition(int from, int to) {
        find(LIMIT, from, to).results().forEach(limit -> knownLimit(limit.group(1), limit.start()));
        Matcher negative = NEGATIVE.matcher(blank(STRING, text)).region(from, to);
        boolean plain = true;
        while (negative.find()) {
            plain = false;
            String found = negative.group();
            add(
                    negative.start(),
                    found.matches("\\d")
                            ? "a number in a condition: give it a name among the thresholds"
                            : "a condition must be positive and plain: \"" + found
                                    + "\" could hold for a missing fact");
        }
        Matcher fact = find(FACT, from, to);
        if (plain && !fact.matches()) {
            add(from, "a condition looks at one fact, written $f : " + about + "( ... )");
        } else if (plain && !fact.group(1).equals(about)) {
            add(fact.start(1), "the criterion is about " + about + ", not " + fact.group(1));
        } else if (plain) {
            find(TERM, fact.start(2), fact.end(2)).results().forEach(term -> term(term.group(), term.start()));
        }
    }

    private void term(String written, int at) {
        Matcher m = ASKED.matcher(written);
        if (!m.matches()) {
            add(
                    at,
                    "a condition is a component and one of known, yes, no, doesNotApply, or of atMost, above, atLeast,"
                            + " below with a threshold by name, not: "
                            + written.strip().lines().findFirst().orElse(""));
            return;
        }
        String component = m.group(1);
        String asked = m.group(2) != null ? m.group(2) : m.group(3);
        Need need = Need.of(criterion.about(), component);
        if (need == null) {
            add(at, about + " has no " + component + " that could be known or missing");
            return;
        }
        hold(needed(component), at, component + NOT_NEEDED);
        Class<?> fit = m.group(3) != null ? Measured.class : asked.matches("yes|no") ? Answer.class : need.type();
        hold(need.type() == fit, at, component + " is a " + need.type().getSimpleName() + ": it has no " + asked);
    }

    private boolean needed(String component) {
        return criterion.needs().stream().anyMatch(n -> n.component().equals(component));
    }

    /** The one verdict of a rule; empty when it is not one. */
    private String consequence(int from, int to) {
        Matcher call = find(CALL, from, to);
        if (!call.matches()) {
            add(from, "a consequence is one verdict: verdicts.pass|caution|stop|doesNotApply(...).seen(...)");
            return "";
        }
        String verdict = call.group(1);
        String id = call.group(2);
        hold(id.equals(criterion.id()), call.start(2), "the verdict is on " + criterion.id() + ", not " + id);
        String said = said(verdict, call.group(3), call.start(1));
        hold(
                !call.group(4).isBlank() || !said.matches(".*(value[}|]|\\{limit}).*"),
                call.start(1),
                "the text speaks of a value and its limit: add .seen(\"threshold\", $f.component())");
        find(SEEN, call.start(4), call.end(4)).results().forEach(seen -> {
            knownLimit(seen.group(1), seen.start());
            hold(needed(seen.group(2)), seen.start(2), seen.group(2) + NOT_NEEDED);
        });
        return verdict;
    }

    /** The text that a verdict stands for; empty where there is none. */
    private String said(String verdict, @Nullable String reason, int at) {
        if (reason == null) {
            boolean pass = verdict.equals("pass");
            hold(pass, at, "the reason is missing");
            return pass ? criterion.passes() : "";
        }
        Reason warned = verdict.matches("caution|stop") ? criterion.reasons().get(reason) : null;
        String exempt = verdict.equals("doesNotApply") ? criterion.exemptions().get(reason) : null;
        String said = warned != null ? warned.says() : exempt;
        hold(said != null, at, verdict + ": there is no text for \"" + reason + "\"");
        boolean weighed = warned == null || warned.stop() == verdict.equals("stop");
        hold(weighed, at, verdict + ": the texts give \"" + reason + "\" another weight");
        return said == null ? "" : said;
    }

    private void knownLimit(String name, int at) {
        if (!catalogue.thresholds().containsKey(name)) {
            add(at, "no threshold is called " + name);
        } else if (!criterion.limits().contains(name)) {
            add(at, name + " belongs to another criterion: \"asks\" has to name {" + name + "}");
        }
    }

    private void hold(boolean held, int at, String problem) {
        if (!held) {
            add(at, problem);
        }
    }

    /** Tells a problem on the line of the first word at a place or behind it. */
    private void add(int place, String problem) {
        int at = place;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        tell(at, problem);
    }

    private void tell(int at, String problem) {
        long line = 1 + text.substring(0, at).chars().filter(c -> c == '\n').count();
        problems.add(criterion.drl() + ":" + line + ": " + problem);
    }

    /** Blanks out what matches, and keeps line breaks so that positions stay true. */
    private static String blank(Pattern pattern, String text) {
        return pattern.matcher(text).replaceAll(m -> spaces(m.group()));
    }

    private static String spaces(String text) {
        return text.replaceAll("[^\\n]", " ");
    }
}
