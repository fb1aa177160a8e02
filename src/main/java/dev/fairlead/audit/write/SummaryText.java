package dev.fairlead.audit.write;

import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Look;
import dev.fairlead.audit.summary.NamedCount;
import dev.fairlead.audit.summary.StageCount;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Trouble;
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
                        + part(s.duplicates().count(), " left out because an earlier case has the same pseudonym")
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
        criteria(s, out);
        signals(s, out);
        missing(s, out);
        waivers(s, out);
        looks(s, out);
        trouble("NOT READ", s.unread(), out);
        trouble("GIVEN UP FOR TIME", s.tooLong(), out);
        trouble("FAILED (errors of the program)", s.failed(), out);
        trouble("LEFT OUT (pseudonym met before)", s.duplicates(), out);
        trouble("ERRORS OF THE PROGRAM IN SINGLE CRITERIA (these were not judged)", s.errors(), out);
        if (!h.passedOver().isEmpty()) {
            out.append('\n')
                    .append(Wrap.hanging(
                            "",
                            h.passedOver().size()
                                    + " files of folders were passed over, for their names are not those of cases: "
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
        out.append(
                Wrap.hanging(
                        "",
                        "Each case counts once, by the heaviest that no waiver answers for; waiting: something is not assessed."));
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

    private static void signals(Summary s, StringBuilder out) {
        if (s.named().size() < 2) {
            return;
        }
        out.append("\nRESIDENTS THAT CHANCE ALONE DOES NOT EXPLAIN\n");
        for (Summary.Signal g : s.signals()) {
            out.append(Wrap.hanging(
                    "  " + g.group() + "  ",
                    (g.criterion().isEmpty() ? "all criteria" : g.criterion()) + ": " + g.warned() + " warnings where "
                            + String.format(Locale.ROOT, "%.1f", g.expected()) + " were to be expected of " + g.judged()
                            + " judged"));
        }
        out.append(Wrap.hanging(
                "",
                (s.signals().isEmpty() ? "None among " : "Of ") + s.named().size() + " residents and "
                        + s.criteria().size() + " criteria each; exact tests, false alarms held to "
                        + Math.round(100 * Summary.FALSE_ALARMS) + " % of what is named (Benjamini & Hochberg 1995)."));
    }

    private static void missing(Summary s, StringBuilder out) {
        if (s.missing().isEmpty()) {
            return;
        }
        out.append("\nMOST FREQUENT MISSING FACTS\n");
        for (NamedCount n : s.missing().subList(0, Math.min(MOST, s.missing().size()))) {
            out.append(
                    Wrap.hanging(String.format(Locale.ROOT, "  %6d  ", n.count()), words(n.name()) + "  " + n.name()));
        }
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
        s.notes()
                .forEach(n -> out.append(Wrap.hanging(
                        "  ",
                        n.count() + " do not hold, " + n.kind() + ": "
                                + n.criteria().stream()
                                        .map(c -> (c.name().isEmpty() ? "(none named)" : c.name()) + " " + c.count())
                                        .collect(java.util.stream.Collectors.joining(", ")))));
    }

    private static void looks(Summary s, StringBuilder out) {
        List<Look> looks = s.looks().stream()
                .filter(l -> l.stops() + l.cautions() > 0)
                .limit(MOST)
                .toList();
        if (looks.isEmpty()) {
            return;
        }
        out.append("\nCASES THAT NEED A LOOK FIRST\n");
        for (Look l : looks) {
            out.append(Wrap.hanging(
                    String.format(Locale.ROOT, "  %-14s ", l.row().id()),
                    l.stops() + " stop, " + l.cautions() + " caution, " + l.open() + " open; "
                            + l.row().stage().word()
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
