package dev.fairlead.report.text;

import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.AppliedWaiver;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.PlaceFinding;
import dev.fairlead.findings.SeenValue;
import dev.fairlead.findings.Weight;
import dev.fairlead.report.summary.Chance;
import dev.fairlead.report.summary.InShort;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.catalogue.Status;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** One finding as plain text: a warning in short or in full, a criterion that was not assessed, a pass in a line. */
final class FindingText {
    /** A pass that takes more characters than this is shortened: some three lines. */
    private static final int LONG_PASS = 200;

    private static final int SOURCES = 3;

    private FindingText() {}

    /**
     * The fault, its stage, what is seen and the first thing to do; one of the same cause as the one above it adds its
     * numbers alone.
     */
    static String shortly(Finding f) {
        String head = mark(f);
        String indent = " ".repeat(head.length());
        boolean told = !f.under().isEmpty();
        String first = Wrap.hanging(
                head, InShort.title(f) + " (" + f.stage().word() + ")" + (told ? ", " + InShort.WITH_THE_ABOVE : ""));
        return first
                + Wrap.hanging(indent, InShort.seen(f))
                + (told ? "" : Wrap.hanging(indent, "To do: " + firstSentence(InShort.todo(f))));
    }

    /** A warning of the same cause as the one above it: fault, numbers and advice; the rest was told there. */
    private static String with(Finding f) {
        return Wrap.hanging(
                        mark(f),
                        InShort.title(f) + " (" + f.stage().word() + ": " + f.id() + "), " + InShort.WITH_THE_ABOVE
                                + waived(f))
                + Wrap.hanging("  seen     ", f.seen() + remark(f))
                + Wrap.hanging("  to do    ", InShort.todo(f));
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }

    /** The fault with its numbers, why, what to do and the sources in short. */
    static String inFull(Finding f) {
        if (!f.under().isEmpty()) {
            return with(f);
        }
        StringBuilder out = new StringBuilder();
        out.append(Wrap.hanging(mark(f), InShort.title(f) + " (" + f.stage().word() + ": " + f.id() + ")" + waived(f)));
        out.append(Wrap.hanging("  seen     ", f.seen() + remark(f)));
        String limits = limits(f);
        if (!limits.isEmpty()) {
            out.append(Wrap.hanging("  limit    ", limits));
        }
        out.append(Wrap.hanging("  why      ", f.why()));
        out.append(Wrap.hanging("  to do    ", InShort.todo(f)));
        out.append(f.dispute().isEmpty() ? "" : Wrap.hanging("  disputed ", f.dispute()));
        out.append(f.sources().isEmpty() ? "" : Wrap.hanging("  source   ", sources(f)));
        out.append(
                f.missing().isEmpty()
                        ? ""
                        : Wrap.hanging(
                                Missing.heading(f.missing()).equals("Missing") ? "  missing  " : "  waits    ",
                                missing(f.missing())));
        if (f.waiver().isPresent()) {
            AppliedWaiver w = f.waiver().get();
            out.append(Wrap.hanging(
                    "  waived   ",
                    w.reason() + " (" + w.by().word() + ", " + w.date() + ", holds until " + w.expires() + ")"));
        }
        return out.toString();
    }

    /** A criterion that was not assessed, with what is missing for it and where that is entered. */
    static String open(Finding f) {
        return Wrap.hanging(
                "  not assessed   ",
                f.id() + ": "
                        + (f.failed()
                                ? f.seen()
                                : String.join(
                                        "; ",
                                        f.missing().stream()
                                                .map(m -> m.words() + " " + m.pointer())
                                                .toList())));
    }

    /** A pass, or why a criterion does not apply. */
    static String line(String head, Finding f) {
        return Wrap.hanging(head, f.id() + ": " + (f.outcome() == Status.PASS ? pass(f) : f.seen()) + remark(f));
    }

    private static String mark(Finding f) {
        return f.weight() == Weight.STOP ? "STOP     " : f.onTheLimit() ? "LIMIT    " : "CAUTION  ";
    }

    private static String waived(Finding f) {
        return f.waiver().isPresent() ? " [waived]" : "";
    }

    private static String remark(Finding f) {
        String remark = Chance.remark(f);
        return remark.isEmpty() ? "" : " [" + remark + "]";
    }

    /** Each limit that a value is on the wrong side of, and by how much; places with the same are named together. */
    private static String limits(Finding f) {
        Map<String, Set<String>> places = new LinkedHashMap<>();
        for (PlaceFinding p : f.places()) {
            for (SeenValue v : p.outcome() == f.outcome() ? p.values() : List.<SeenValue>of()) {
                if (f.onTheLimit() ? v.close() : v.margin() < 0) {
                    places.computeIfAbsent(limit(v), l -> new LinkedHashSet<>()).add(p.words());
                }
            }
        }
        return places.entrySet().stream()
                .map(e -> (e.getValue().contains("") ? "" : String.join(", ", e.getValue()) + ": ") + e.getKey())
                .collect(Collectors.joining("; "));
    }

    /** A limit of nought or below it is told by the words of the finding. */
    private static String limit(SeenValue v) {
        String margin = InShort.margin(v) + (v.margin() > 0 ? " it" : "");
        return v.limit() > 0 ? v.limitText() + ", " + margin : margin + (v.limit() < 0 ? " of the limit" : "");
    }

    private static String sources(Finding f) {
        List<String> all = f.sources().stream().map(Source::named).distinct().toList();
        return String.join("; ", all.subList(0, Math.min(SOURCES, all.size())))
                + (all.size() > SOURCES ? "; and " + (all.size() - SOURCES) + " more" : "");
    }

    private static String missing(List<Missing> missing) {
        return String.join("; ", missing.stream().map(Missing::words).toList());
    }

    /** What is seen; where many places say it at length, how many they are and the one that is closest to its limit. */
    private static String pass(Finding f) {
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
                : passed + " places pass; closest to its limit, " + nearest.words() + ": " + nearest.text() + ".";
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
