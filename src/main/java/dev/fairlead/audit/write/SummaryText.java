package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Gap;
import dev.fairlead.audit.summary.Group;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Look;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.StageCount;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Trends;
import dev.fairlead.audit.summary.Trouble;
import dev.fairlead.audit.summary.WaiverReview;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Words;
import dev.fairlead.model.Stage;
import java.util.List;
import java.util.Locale;

/** An audit as plain text for 80 columns. */
public final class SummaryText {
    private static final int MOST = 10;

    private SummaryText() {}

    /** The whole summary. */
    public static String of(Heading h, Summary s) {
        StringBuilder out = new StringBuilder();
        out.append(Wrap.hanging(
                "",
                "Audit: " + s.judged() + (s.judged() == 1 ? " case" : " cases") + " judged"
                        + part(s.unread().count(), " unreadable")
                        + part(s.tooLong().count(), " given up for time")
                        + part(s.failed().count(), " failed")
                        + part(s.earlier().count(), " earlier states passed over for later ones")
                        + "."));
        out.append(Wrap.hanging("", "Of " + String.join(", ", h.paths()) + "."));
        out.append(Wrap.hanging(
                "",
                "Fairlead " + h.tool() + ", rulebase " + h.rulebase().version() + " "
                        + h.rulebase().hash().substring(0, 8)
                        + (h.rulebase().changed().isEmpty()
                                ? ""
                                : " with other thresholds " + h.rulebase().changed())
                        + (h.day().isEmpty() ? "" : ", for " + h.day())
                        + (h.stage().isEmpty() ? "" : ", judged as of stage " + h.stage()) + "."
                        + (h.forces() ? "" : " " + Heading.NO_FORCES)));
        stages(s, out);
        teaching(s, out);
        looks(s, out);
        residents(s, out);
        signals(s, out);
        trends(s, out);
        missing(s, out);
        OutturnText.add(s.outturn(), out);
        criteria(s, out);
        waivers(s, out);
        trouble("NOT READ", s.unread(), out);
        trouble("GIVEN UP FOR TIME", s.tooLong(), out);
        trouble("FAILED (errors of the program)", s.failed(), out);
        trouble("CELLS THAT CANNOT BE READ (the case counts without them; --strict refuses it)", s.lost(), out);
        trouble("EARLIER STATES (a later one of the same case counts)", s.earlier(), out);
        trouble("ERRORS OF THE PROGRAM IN SINGLE CRITERIA (these were not judged)", s.errors(), out);
        if (!h.passedOver().isEmpty()) {
            out.append('\n')
                    .append(Wrap.hanging(
                            "",
                            h.passedOver().size()
                                    + " files of folders were passed over (no case by its name, a link to a folder, or no file): "
                                    + String.join(
                                            ", ",
                                            h.passedOver()
                                                    .subList(
                                                            0,
                                                            Math.min(
                                                                    MOST,
                                                                    h.passedOver()
                                                                            .size())))
                                    + (h.passedOver().size() > MOST ? ", …" : "")));
        }
        return out.append('\n').append(Wrap.hanging("", Report.CAUTION)).toString();
    }

    private static void stages(Summary s, StringBuilder out) {
        out.append("\nSTAGE           CASES    STOP  CAUTION  WAITING    CLEAR\n");
        for (StageCount c : s.stages()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%-12s %8d %7d %8d %8d %8d%n",
                    c.stage().word(),
                    c.cases(),
                    c.stop(),
                    c.caution(),
                    c.waiting(),
                    c.clear()));
        }
        out.append(Wrap.hanging(
                "", "Each case counts once, by the heaviest that is not waived; waiting: something is not assessed."));
    }

    private static void criteria(Summary s, StringBuilder out) {
        out.append("\nCRITERION                            WARN   JUDGED   RATE  95 % INTERVAL   OPEN\n");
        for (Stage stage : Stage.values()) {
            List<CriterionCount> here = s.criteria().stream()
                    .filter(c -> c.stage() == stage && c.judged() + c.notAssessed() + c.failed() > 0)
                    .toList();
            if (!here.isEmpty()) {
                out.append(stage.word()).append('\n');
            }
            for (CriterionCount c : here) {
                out.append(String.format(
                        Locale.ROOT,
                        "  %-34s %5d %8d %6s  %12s %6d%n",
                        c.id(),
                        c.warn(),
                        c.judged(),
                        c.judged() == 0
                                ? "–"
                                : String.format(
                                        Locale.ROOT,
                                        "%.1f %%",
                                        100 * c.warnRate().share()),
                        Percent.interval(c.warnRate()),
                        c.notAssessed()));
            }
        }
        out.append(Wrap.hanging(
                "", "Rate: warnings among cases judged, with Wilson's interval; open: cases where a fact is missing."));
    }

    private static void teaching(Summary s, StringBuilder out) {
        List<CriterionCount> first = s.teaching(MOST);
        if (first.isEmpty()) {
            return;
        }
        out.append("\nWHERE TEACHING HELPS MOST            WARN  JUDGED    RATE 95 % INTERVAL  STOP\n");
        for (CriterionCount c : first) {
            out.append(String.format(
                    Locale.ROOT,
                    "  %-34s %5d %7d %7s %13s %5d%n",
                    c.id(),
                    c.warn(),
                    c.judged(),
                    Percent.of(c.warnRate().share()),
                    Percent.interval(c.warnRate()),
                    c.stop()));
        }
    }

    private static void residents(Summary s, StringBuilder out) {
        if (s.named().isEmpty()) {
            return;
        }
        out.append("\nRESIDENT   CASES STOP WARN EXPECTED  TIMES OTHERS    FACTS GIVEN\n");
        for (Comparisons.Line l : s.comparisons().lines()) {
            String name = l.group().name();
            ClusteredRate given = l.group().completeness();
            out.append(String.format(
                    Locale.ROOT,
                    "%-10s %5d %4d %4d %8.1f  %-15s %s%s%n",
                    name.length() > 10 ? name + "\n" + " ".repeat(10) : name,
                    l.group().cases(),
                    l.group().withStop(),
                    Math.round(l.warnings()),
                    l.expected(),
                    l.burden().none()
                            ? "–"
                            : String.format(
                                    Locale.ROOT,
                                    "%.1f (%.1f–%.1f)",
                                    l.burden().value(),
                                    l.burden().low(),
                                    l.burden().high()),
                    Percent.clustered(given),
                    l.few() ? " few" : ""));
        }
        if (!s.alikeCodes().isEmpty()) {
            out.append(Wrap.hanging("", "Codes that may be one resident: " + String.join("; ", s.alikeCodes()) + "."));
        }
        out.append(Wrap.hanging(
                "",
                "In order of codes; nobody is ranked. Expected: what the overall rates give for the criteria judged in"
                        + " these cases, stage by stage. Stop: cases with an open stop. Few: under "
                        + Comparisons.FEWEST_CASES + " cases, not compared."
                        + (s.unnamed() == 0
                                ? ""
                                : " " + s.unnamed() + (s.unnamed() == 1 ? " case names" : " cases name")
                                        + " no resident.")));
    }

    private static void signals(Summary s, StringBuilder out) {
        Comparisons c = s.comparisons();
        if (c.compared() < 1) {
            return;
        }
        list("STANDS OUT", c.out(), out);
        if (c.out().isEmpty()) {
            out.append("\nNOTHING STANDS OUT\n");
        }
        out.append(Wrap.hanging("", SignalWords.CHANCE + " " + SignalWords.detectable(c)));
        list("TO WATCH (about one entry of each kind is chance)", c.watch(), out);
    }

    private static void list(String head, List<Signal> signals, StringBuilder out) {
        if (signals.isEmpty()) {
            return;
        }
        out.append('\n').append(head).append('\n');
        for (Signal g : signals.subList(0, Math.min(2 * MOST, signals.size()))) {
            out.append(Wrap.hanging(
                    "  " + g.resident() + "  ", SignalWords.what(g) + ": " + SignalWords.figures(g) + "."));
        }
        if (signals.size() > 2 * MOST) {
            out.append("  and ").append(signals.size() - 2 * MOST).append(" more\n");
        }
    }

    private static void trends(Summary s, StringBuilder out) {
        List<Trends.Line> told =
                s.trends().lines().stream().filter(l -> !l.tooFew()).toList();
        if (told.isEmpty()) {
            return;
        }
        out.append("\nIS IT GETTING BETTER (warnings over expected, by time)\n");
        told.forEach(l -> out.append(String.format(
                Locale.ROOT, "  %-14s %s%n", l.of() == Trends.Of.ALL ? "all" : l.name(), SignalWords.trend(l))));
        if (SignalWords.may(told)) {
            out.append(Wrap.hanging("  ", SignalWords.MAY));
        }
        int few = s.trends().lines().size() - told.size();
        if (few > 0) {
            out.append(
                    Wrap.hanging("  ", few + " more steps or residents: too few cases, warnings or months to tell."));
        }
    }

    private static void missing(Summary s, StringBuilder out) {
        if (s.missing().isEmpty()) {
            return;
        }
        out.append("\nWHAT IS MISSING, AND WITH WHOM\n")
                .append(Wrap.hanging("  ", Percent.clustered(s.completeness()) + " of the facts asked are given."));
        for (Gap n : s.missing().subList(0, Math.min(MOST, s.missing().size()))) {
            String with = with(s, n);
            out.append(Wrap.hanging(
                    String.format(
                            Locale.ROOT,
                            "  %6d of %-6d ",
                            n.rate().count(),
                            n.rate().of()),
                    words(n.pointer()) + "  " + n.pointer() + (with.isEmpty() ? "" : "; most with " + with)));
        }
        out.append(Wrap.hanging(
                "  by step: ",
                s.givenByStep().entrySet().stream()
                        .filter(e -> !e.getValue().none())
                        .map(e -> e.getKey().word() + " " + Percent.clustered(e.getValue()))
                        .collect(java.util.stream.Collectors.joining("; "))));
        out.append(Wrap.hanging(
                "  by period: ",
                s.periods().stream()
                        .filter(g -> g.cases() > 0)
                        .map(g -> g.name() + " " + Percent.clustered(g.completeness()))
                        .collect(java.util.stream.Collectors.joining("; "))));
    }

    /** Residents in whose cases a fact is missing most, with counts; empty where none is named. */
    public static String with(Summary s, Gap gap) {
        return s.named().stream()
                .filter(g -> g.missing(gap.fact()) > 0)
                .sorted(java.util.Comparator.comparingInt((Group g) -> -g.missing(gap.fact())))
                .limit(3)
                .map(g -> g.name() + " " + g.missing(gap.fact()) + " of " + g.asked(gap.fact()))
                .collect(java.util.stream.Collectors.joining(", "));
    }

    /** What a pointer with {@code *} for entries means. */
    public static String words(String pointer) {
        return pointer.contains("/*")
                ? Words.of(pointer.replace("/*", "/0")).replaceAll(" 1\\b", "")
                : Words.of(pointer);
    }

    private static void waivers(Summary s, StringBuilder out) {
        long waived = s.criteria().stream().mapToLong(CriterionCount::waived).sum();
        if (waived == 0 && s.notes().isEmpty()) {
            return;
        }
        out.append("\nWAIVERS\n")
                .append(Wrap.hanging(
                        "  ",
                        waived + " findings are waived"
                                + s.criteria().stream()
                                        .filter(c -> c.waived() > 0)
                                        .map(c -> c.id() + " " + c.waived())
                                        .collect(java.util.stream.Collectors.joining(", ", ": ", "."))));
        WaiverReview review = s.waivers();
        if (review.count() > 0) {
            out.append(Wrap.hanging(
                    "  ",
                    "Answered for by "
                            + review.roles().stream()
                                    .map(r -> r.name() + " " + r.count())
                                    .collect(java.util.stream.Collectors.joining(", "))
                            + ". " + review.expiring() + " end within " + WaiverReview.EXPIRING + " days."));
            review.residents().forEach((name, rate) -> {
                if (rate.count() > 0) {
                    out.append(Wrap.hanging(
                            "  " + name + "  ",
                            rate.count() + " of " + rate.of() + " warnings waived (" + Percent.interval(rate) + ")"));
                }
            });
            review.soon().stream()
                    .limit(MOST)
                    .forEach(w -> out.append(Wrap.hanging("  " + w.caseId() + "  ", waiver(w))));
        }
        s.notes()
                .forEach(n -> out.append(Wrap.hanging(
                        "  ",
                        n.count() + " do not hold, " + n.kind() + ": "
                                + n.criteria().stream()
                                        .map(c -> (c.name().isEmpty() ? "(none named)" : c.name()) + " " + c.count())
                                        .collect(java.util.stream.Collectors.joining(", ")))));
    }

    /** A waiver in one line: what, who, how old, how long it still holds, and why. */
    private static String waiver(WaiverReview.One w) {
        return w.waiver().criterion() + ", " + w.waiver().by() + ", " + w.age() + " days old, ends "
                + w.waiver().expires() + (w.expiring() ? " (soon)" : "") + ": "
                + w.waiver().reason();
    }

    /** What changed since an earlier audit. */
    public static String since(Summary.Since x) {
        return "Since the last audit: " + x.newCases() + (x.newCases() == 1 ? " new case, " : " new cases, ")
                + x.fresh() + (x.fresh() == 1 ? " warning" : " warnings") + " new, " + x.gone() + " no longer open.";
    }

    private static void looks(Summary s, StringBuilder out) {
        List<Look> looks = s.looks().stream()
                .filter(l -> l.stops() + l.cautions() > 0)
                .limit(MOST)
                .toList();
        if (looks.isEmpty()) {
            return;
        }
        out.append("\nWHO FIRST\n");
        s.since().ifPresent(x -> out.append(Wrap.hanging("  ", since(x))));
        for (Look l : looks) {
            out.append(Wrap.hanging(
                    String.format(Locale.ROOT, "  %-14s ", l.row().id()),
                    l.stops() + " stop, " + l.cautions() + " caution, " + l.open() + " open"
                            + (l.fresh() > 0 ? ", " + l.fresh() + " new" : "") + "; "
                            + l.row().reached().word()
                            + (l.row().course() == CaseRow.Course.WIRE_IN ? ", wire in" : "")
                            + (l.row().resident().isEmpty()
                                    ? ""
                                    : ", " + l.row().resident()) + "  "
                            + l.row().source()));
        }
    }

    private static void trouble(String head, Trouble t, StringBuilder out) {
        if (t.any()) {
            out.append('\n').append(head).append('\n');
            t.first().stream().limit(MOST).forEach(o -> out.append(Wrap.hanging("  ", o.source() + ": " + o.reason())));
            if (t.count() > MOST) {
                out.append("  and ")
                        .append(t.count() - Math.min(MOST, t.first().size()))
                        .append(" more\n");
            }
        }
    }

    private static String part(long n, String what) {
        return n == 0 ? "" : ", " + n + what;
    }
}
