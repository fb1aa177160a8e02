package dev.fairlead.report.text;

import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.AppliedWaiver;
import dev.fairlead.findings.Counts;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.InputNote;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.PlaceFinding;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.SeenValue;
import dev.fairlead.findings.WaiverNote;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.verdict.OwnError;
import dev.fairlead.rules.verdict.Status;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A report as plain text for 80 columns: warnings first, then what is missing, then passes in a line each. */
public final class ReportText {
    /** A pass that takes more characters than this is shortened: some three lines. */
    private static final int LONG_PASS = 200;

    /** A chance of another outcome from which on it is told of findings that are not close. */
    private static final double WORTH_A_WORD = 0.05;

    private ReportText() {}

    /** The whole report; {@code all} also lists what does not apply, and why. */
    public static String of(Report report, boolean all) {
        StringBuilder out = new StringBuilder();
        head(report, out);
        out.append(
                report.certainty().isEmpty()
                        ? ""
                        : RepeatText.of(report.certainty().get()));
        for (InputNote note : report.input()) {
            out.append(Wrap.hanging("input     ", note.text()));
        }
        List<Finding> findings = report.findings().forReading();
        for (Stage stage : report.stages()) {
            stage(findings, stage, all, out);
        }
        for (WaiverNote note : report.findings().waiverNotes()) {
            out.append(note == report.findings().waiverNotes().get(0) ? "\nWAIVERS THAT DO NOT COUNT HERE\n" : "");
            out.append(Wrap.hanging(
                    "  ",
                    (note.criterion().isEmpty() ? "" : note.criterion() + ": ") + note.text() + " (" + note.pointer()
                            + ")"));
        }
        for (OwnError error : report.errors()) {
            out.append(
                    error == report.errors().get(0)
                            ? "\nERRORS OF THE PROGRAM (these criteria were not judged)\n"
                            : "");
            out.append(Wrap.hanging("  ", error.toString()));
        }
        out.append('\n').append(Wrap.hanging("", report.caution()));
        return out.toString();
    }

    private static void head(Report report, StringBuilder out) {
        out.append(Wrap.hanging(
                "",
                "Case " + report.subject().id() + ", judged as of stage "
                        + report.stages().get(report.stages().size() - 1).word()
                        + (report.subject().date().isEmpty()
                                ? ", no day given"
                                : " for " + report.subject().date().get())
                        + "."));
        if (!report.subject().note().isEmpty()) {
            out.append(Wrap.hanging("", report.subject().note()));
        }
        out.append(Wrap.hanging(
                "",
                "Fairlead " + report.tool() + ", rulebase " + report.rulebase().version() + " "
                        + report.rulebase().hash().substring(0, 8)
                        + changed(report.rulebase().changed()) + "."));
        Counts n = report.counts();
        out.append(Wrap.hanging(
                "",
                n.stop() + " stop, " + n.caution() + " caution, " + n.notAssessed() + " not assessed, " + n.pass()
                        + " pass, "
                        + n.doesNotApply() + " " + (n.doesNotApply() == 1 ? "does" : "do") + " not apply"
                        + (n.waived() > 0 ? "; " + n.waived() + " waived" : "")
                        + (n.close() > 0 ? "; " + n.close() + " close to a limit" : "") + "."));
    }

    private static String changed(Map<String, Double> thresholds) {
        return thresholds.isEmpty()
                ? ""
                : " with " + thresholds.size() + (thresholds.size() == 1 ? " threshold" : " thresholds")
                        + " of this site (" + String.join(", ", thresholds.keySet()) + ")";
    }

    private static void stage(List<Finding> findings, Stage stage, boolean all, StringBuilder out) {
        out.append('\n').append(stage.word().toUpperCase(Locale.ROOT)).append('\n');
        int off = 0;
        for (Finding f : findings) {
            if (f.stage() != stage) {
                continue;
            }
            switch (f.outcome()) {
                case WARN -> warning(f, out);
                case NOT_ASSESSED -> open(f, out);
                case PASS -> out.append(line("  pass          ", f));
                case DOES_NOT_APPLY -> {
                    off++;
                    if (all) {
                        out.append(line("  not applied   ", f));
                    }
                }
            }
        }
        if (!all) {
            out.append(off == 0 ? "" : "  (" + off + (off == 1 ? " does" : " do") + " not apply; --all tells why)\n");
        }
    }

    private static void warning(Finding f, StringBuilder out) {
        String head = switch (f.weight()) {
            case STOP -> "  STOP          ";
            default -> "  CAUTION       ";
        };
        out.append(Wrap.hanging(head, f.id() + marks(f)));
        out.append(Wrap.hanging("    seen        ", f.seen()));
        numbers(f, out);
        out.append(Wrap.hanging("    asked       ", f.asks()));
        out.append(Wrap.hanging("    why         ", f.why()));
        out.append(Wrap.hanging("    what to do  ", f.todo()));
        tail(f, out);
    }

    private static void open(Finding f, StringBuilder out) {
        out.append(Wrap.hanging("  not assessed  ", f.id() + marks(f)));
        if (f.failed()) {
            out.append(Wrap.hanging("    seen        ", f.seen()));
        }
        missing(f, out);
        out.append(Wrap.hanging("    asked       ", f.asks()));
    }

    private static void numbers(Finding f, StringBuilder out) {
        for (PlaceFinding p : f.places()) {
            for (SeenValue v : p.outcome() == Status.WARN ? p.values() : List.<SeenValue>of()) {
                out.append(Wrap.hanging(
                        "    number      ",
                        (p.words().isEmpty() ? "" : p.words() + ": ") + v.text() + ", limit " + v.limitText()
                                + ", margin " + Numbers.text(v.margin(), v.unit()) + (v.close() ? ", close" : "")));
            }
        }
    }

    private static void tail(Finding f, StringBuilder out) {
        if (!f.dispute().isEmpty()) {
            out.append(Wrap.hanging("    disputed    ", f.dispute()));
        }
        List<String> sources = new ArrayList<>();
        for (Source s : f.sources()) {
            sources.add(s.citation());
        }
        if (!sources.isEmpty()) {
            out.append(Wrap.hanging("    source      ", String.join(" ", sources)));
        }
        missing(f, out);
        if (f.waiver().isPresent()) {
            AppliedWaiver w = f.waiver().get();
            out.append(Wrap.hanging(
                    "    waived      ",
                    w.reason() + " (" + w.by().word() + ", " + w.date() + ", holds until " + w.expires() + ")"));
        }
    }

    private static void missing(Finding f, StringBuilder out) {
        for (Missing m : f.missing()) {
            out.append(Wrap.hanging("    missing     ", m.words() + "  " + m.pointer()));
        }
    }

    private static String marks(Finding f) {
        return doubt(f) + (f.waiver().isPresent() ? "  [waived]" : "");
    }

    /** Close to a limit, and the chance of another outcome where it is close or worth a word. */
    private static String doubt(Finding f) {
        boolean told = f.flip().isPresent()
                && (f.flip().getAsDouble() >= WORTH_A_WORD
                        || f.close() && f.flip().getAsDouble() > 0);
        String chance = told ? Numbers.chance(f.flip().getAsDouble()) + " chance of another outcome" : "";
        return !f.close() && !told
                ? ""
                : "  [" + (f.close() ? "close" : "") + (f.close() && told ? "; " : "") + chance + "]";
    }

    private static String line(String head, Finding f) {
        return Wrap.hanging(head, f.id() + ": " + (f.outcome() == Status.PASS ? shortly(f) : f.seen()) + doubt(f));
    }

    /**
     * What is seen; where many places say it at length, how many they are and the one that comes nearest to its limit.
     */
    private static String shortly(Finding f) {
        if (f.seen().length() <= LONG_PASS) {
            return f.seen();
        }
        int passed = 0;
        PlaceFinding nearest = null;
        double least = 0;
        for (PlaceFinding p : f.places()) {
            passed += p.outcome() == Status.PASS ? 1 : 0;
            if (p.outcome() == Status.PASS && !p.values().isEmpty() && (nearest == null || room(p) < least)) {
                nearest = p;
                least = room(p);
            }
        }
        return nearest == null
                ? f.seen()
                : passed + " places pass; nearest to its limit, " + nearest.words() + ": " + nearest.text() + ".";
    }

    /** Distance to the nearest limit as a share of that limit; its plain size where the limit is zero. */
    private static double room(PlaceFinding place) {
        double least = Double.POSITIVE_INFINITY;
        for (SeenValue v : place.values()) {
            least = Math.min(least, v.limit() == 0 ? v.margin() : v.margin() / Math.abs(v.limit()));
        }
        return least;
    }
}
