package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.agree.Detection;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.drawing.Wrap;
import java.util.Locale;

/** What an audit found of what was planted, as text for 80 columns and as JSON. */
public final class DetectionText {
    /** Why a verdict counts nowhere. */
    public static final String LEFT_OUT = "only the beam model of the wire could tell, which was left out.";

    private static final int MOST = 20;

    private DetectionText() {}

    public static String of(Detection.Result r) {
        StringBuilder out = new StringBuilder(
                "\nPLANTED FAULTS FOUND                SENSITIVITY        SPECIFICITY      GAPS FOUND\n");
        for (Detection.Line l : r.lines()) {
            if (l.sensitivity().of() + l.specificity().of() + l.leftOut() > 0) {
                out.append(String.format(
                        Locale.ROOT,
                        "%s %-32s %11s %18s %15s%n",
                        l.exact() ? " " : "!",
                        l.criterion(),
                        parts(l.sensitivity()),
                        parts(l.specificity()),
                        parts(l.open())));
                if (l.leftOut() > 0) {
                    out.append(Wrap.hanging("    ", l.leftOut() + " counted nowhere: " + LEFT_OUT));
                }
                l.reasons()
                        .forEach(m -> out.append(Wrap.hanging(
                                "    ",
                                m.cases() + " planted " + m.planted() + ", found " + m.found() + ", first "
                                        + m.first().caseId() + "; " + m.first().why())));
            }
        }
        out.append(Wrap.hanging(
                "",
                r.cases() + " cases with a known truth"
                        + (r.withoutTruth() > 0 ? ", " + r.withoutTruth() + " without" : "") + ". "
                        + (r.exact() ? verdict(r) : r.missed() + " verdicts differ from what was planted:")));
        r.misses().stream()
                .limit(MOST)
                .forEach(m -> out.append(Wrap.hanging(
                        "  ",
                        m.caseId() + " " + m.criterion() + ": planted " + m.planted() + ", found " + m.found() + "; "
                                + m.why())));
        if (r.missed() > MOST) {
            out.append("  and ").append(r.missed() - MOST).append(" more\n");
        }
        return out.toString();
    }

    /** What an exact result says. */
    public static String verdict(Detection.Result r) {
        return "Every fault and every gap was found, and nothing else"
                + (r.lines().stream().anyMatch(l -> l.leftOut() > 0) ? ", of what was judged." : ".");
    }

    static String parts(Rate r) {
        return r.none() ? "–" : r.count() + "/" + r.of();
    }

    /** Adds what was found to a summary. */
    public static void json(Detection.Result r, ObjectNode root) {
        ObjectNode all = root.putObject("detection")
                .put("cases", r.cases())
                .put("withoutTruth", r.withoutTruth())
                .put("exact", r.exact())
                .put("missed", r.missed());
        ArrayNode lines = all.putArray("criteria");
        for (Detection.Line l : r.lines()) {
            ObjectNode o = lines.addObject().put("criterion", l.criterion());
            SummaryJson.rate(o.putObject("sensitivity"), l.sensitivity());
            SummaryJson.rate(o.putObject("specificity"), l.specificity());
            SummaryJson.rate(o.putObject("gapsFound"), l.open());
            SummaryJson.rate(o.putObject("assessedOtherwise"), l.openSpecificity());
            if (l.leftOut() > 0) {
                o.put("leftOut", l.leftOut()).put("leftOutBecause", LEFT_OUT);
            }
            if (!l.reasons().isEmpty()) {
                ArrayNode reasons = o.putArray("reasons");
                l.reasons()
                        .forEach(m -> reasons.addObject()
                                .put("planted", m.planted())
                                .put("found", m.found())
                                .put("cases", m.cases())
                                .put("first", m.first().caseId())
                                .put("why", m.first().why()));
            }
        }
        ArrayNode misses = all.putArray("misses");
        r.misses()
                .forEach(m -> misses.addObject()
                        .put("case", m.caseId())
                        .put("source", m.source())
                        .put("criterion", m.criterion())
                        .put("planted", m.planted())
                        .put("found", m.found())
                        .put("why", m.why()));
    }
}
