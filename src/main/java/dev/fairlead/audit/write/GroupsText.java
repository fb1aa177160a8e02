package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.compare.GroupComparison;
import dev.fairlead.audit.statistics.Ratio;
import dev.fairlead.audit.statistics.ShareDifference;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Report;
import java.util.List;
import java.util.Locale;

/** Two groups of cases side by side: as text for 80 columns and as JSON. */
public final class GroupsText {
    private static final int MOST = 25;
    /** How the figures are meant; for every reader of them. */
    public static final String MEANING =
            "Differences in points of a per cent, first less second, with the interval of Newcombe 1998 (method 10); for facts given"
                    + " it allows for gaps of one case that go together. Times: warnings over expected for the criteria judged at each stage,"
                    + " divided by the same of the other. An interval of one criterion leaves no difference out by chance once in twenty.";

    private GroupsText() {}

    public static String of(GroupComparison.Result r) {
        StringBuilder out = new StringBuilder();
        out.append(Wrap.hanging("", first(r)));
        notes(r).forEach(n -> out.append(Wrap.hanging("", n)));
        out.append(Wrap.hanging("  cases with an open stop  ", stops(r)));
        out.append(
                Wrap.hanging("  warnings                 ", times(r, r.against().burden())));
        out.append(
                Wrap.hanging("  stops                    ", times(r, r.against().stops())));
        out.append(Wrap.hanging("  facts given              ", given(r)));
        List<Signal> named = r.comparisons().out();
        out.append(named.isEmpty() ? "\nNOTHING STANDS OUT\n" : "\nSTANDS OUT\n");
        named.forEach(s -> out.append(
                Wrap.hanging("  " + s.resident() + "  ", SignalWords.what(s) + ": " + SignalWords.figures(s))));
        String seen = detectable(r);
        out.append(seen.isEmpty() ? "" : Wrap.hanging("", seen));
        out.append(String.format(
                Locale.ROOT, "%n%-36s %9s %9s %s%n", "CRITERION", "FIRST", "SECOND", "DIFFERENCE (95 %)"));
        r.lines().stream()
                .limit(MOST)
                .forEach(l -> out.append(String.format(
                        Locale.ROOT,
                        "%-36s %9s %9s %s%s%n",
                        l.criterion(),
                        l.a().count() + "/" + l.a().of(),
                        l.b().count() + "/" + l.b().of(),
                        points(l.difference()),
                        l.difference().clear() ? " *" : "")));
        if (r.lines().size() > MOST) {
            out.append("and ").append(r.lines().size() - MOST).append(" more, less clear\n");
        }
        return out.append(Wrap.hanging("", "* the interval leaves no difference out. " + MEANING))
                .append('\n')
                .append(Wrap.hanging("", Report.CAUTION))
                .toString();
    }

    public static String first(GroupComparison.Result r) {
        return "First: " + r.a() + ", " + OutturnText.cases(r.first().cases()) + ". Second: " + r.b() + ", "
                + OutturnText.cases(r.second().cases()) + ".";
    }

    /** What is to be known before the figures are read. */
    public static List<String> notes(GroupComparison.Result r) {
        java.util.ArrayList<String> notes = new java.util.ArrayList<>();
        if (r.both() > 0) {
            notes.add(OutturnText.cases((int) r.both())
                    + " in both: intervals take them as different children, and are somewhat too wide.");
        }
        if (r.neither() > 0) {
            notes.add(OutturnText.cases((int) r.neither()) + " in neither.");
        }
        if (r.notJudged() > 0) {
            notes.add(OutturnText.cases((int) r.notJudged()) + " not judged.");
        }
        if (Math.min(r.first().cases(), r.second().cases()) < dev.fairlead.audit.summary.Comparisons.FEWEST_CASES) {
            notes.add("A group of fewer than " + dev.fairlead.audit.summary.Comparisons.FEWEST_CASES
                    + " cases is shown and not compared.");
        }
        return notes;
    }

    public static String stops(GroupComparison.Result r) {
        return share(GroupComparison.Result.withStop(r.first()).share()) + " and "
                + share(GroupComparison.Result.withStop(r.second()).share()) + ", difference " + points(r.stops());
    }

    public static String given(GroupComparison.Result r) {
        return share(r.first().completeness().share()) + " and "
                + share(r.second().completeness().share()) + ", difference " + points(r.given());
    }

    public static String times(GroupComparison.Result r, Ratio ratio) {
        return ratio.none() ? "too few to compare" : SignalWords.ratio(ratio) + " those of " + r.b();
    }

    private static String share(double v) {
        return Percent.of(v);
    }

    /** Such as "12 (3 to 21)". */
    public static String points(ShareDifference d) {
        return Double.isNaN(d.value()) ? "–" : one(d.value()) + " (" + one(d.low()) + " to " + one(d.high()) + ")";
    }

    private static String one(double v) {
        String text = String.format(Locale.ROOT, "%.0f", 100 * v);
        return text.equals("-0") ? "0" : text.replace('-', '−');
    }

    public static ObjectNode json(GroupComparison.Result r) {
        ObjectNode root = JsonMapper.builder()
                .build()
                .createObjectNode()
                .put("format", SummaryJson.FORMAT)
                .put("a", r.a())
                .put("b", r.b())
                .put("casesA", r.first().cases())
                .put("casesB", r.second().cases())
                .put("both", r.both())
                .put("neither", r.neither())
                .put("notJudged", r.notJudged());
        difference(root.putObject("withStop"), r.stops());
        difference(root.putObject("factsGiven"), r.given());
        ratio(root.putObject("warnings"), r.against().burden());
        ratio(root.putObject("stops"), r.against().stops());
        ArrayNode lines = root.putArray("criteria");
        r.lines().forEach(l -> {
            ObjectNode o = lines.addObject()
                    .put("criterion", l.criterion())
                    .put("warnsA", l.a().count())
                    .put("judgedA", l.a().of())
                    .put("warnsB", l.b().count())
                    .put("judgedB", l.b().of());
            difference(o.putObject("difference"), l.difference());
        });
        ArrayNode out = root.putArray("standsOut");
        r.comparisons()
                .out()
                .forEach(s -> out.addObject()
                        .put("group", s.resident())
                        .put("kind", s.family().words())
                        .put("item", s.item())
                        .put("p", s.p()));
        return root.put("caution", Report.CAUTION);
    }

    private static void difference(ObjectNode o, ShareDifference d) {
        if (!Double.isNaN(d.value())) {
            o.put("value", d.value()).put("low", d.low()).put("high", d.high());
        }
    }

    private static void ratio(ObjectNode o, Ratio r) {
        if (!r.none()) {
            o.put("value", r.value()).put("low", r.low()).put("high", r.high());
        }
    }

    /** How large a difference would have been named; empty where there is nothing to compare. */
    public static String detectable(GroupComparison.Result r) {
        return r.comparisons().compared() > 1
                ? SignalWords.detectable(r.comparisons()).replace("A resident", "A group")
                : "";
    }
}
