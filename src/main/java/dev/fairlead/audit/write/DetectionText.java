package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.agree.Detection;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.report.text.Wrap;
import java.util.Locale;

/** What an audit found of what was planted, as text for 80 columns and as JSON. */
public final class DetectionText {
    private static final int MOST = 20;

    private DetectionText() {}

    public static String of(Detection.Result r) {
        StringBuilder out = new StringBuilder("\nPLANTED FAULTS FOUND                SENSITIVITY        SPECIFICITY      GAPS FOUND\n");
        for (Detection.Line l : r.lines()) {
            if (l.sensitivity().of() + l.specificity().of() > 0) {
                out.append(String.format(Locale.ROOT, "%s %-32s %11s %18s %15s%n", l.exact() ? " " : "!", l.criterion(), parts(l.sensitivity()), parts(l.specificity()), parts(l.open())));
            }
        }
        out.append(Wrap.hanging("", r.cases() + " cases with a known truth" + (r.withoutTruth() > 0 ? ", " + r.withoutTruth() + " without" : "") + ". "
                + (r.exact() ? "Every fault and every gap was found, and nothing else." : r.missed() + " verdicts differ from what was planted:")));
        r.misses().stream().limit(MOST).forEach(m -> out.append(Wrap.hanging("  ", m.caseId() + " " + m.criterion() + ": planted " + m.planted() + ", found " + m.found()
                + "; " + m.why())));
        if (r.missed() > MOST) {
            out.append("  and ").append(r.missed() - MOST).append(" more\n");
        }
        return out.toString();
    }

    static String parts(Rate r) {
        return r.none() ? "–" : r.count() + "/" + r.of();
    }

    /** Adds what was found to a summary. */
    public static void json(Detection.Result r, ObjectNode root) {
        ObjectNode all = root.putObject("detection").put("cases", r.cases()).put("withoutTruth", r.withoutTruth()).put("exact", r.exact()).put("missed", r.missed());
        ArrayNode lines = all.putArray("criteria");
        for (Detection.Line l : r.lines()) {
            ObjectNode o = lines.addObject().put("criterion", l.criterion());
            SummaryJson.rate(o.putObject("sensitivity"), l.sensitivity());
            SummaryJson.rate(o.putObject("specificity"), l.specificity());
            SummaryJson.rate(o.putObject("gapsFound"), l.open());
            SummaryJson.rate(o.putObject("assessedOtherwise"), l.openSpecificity());
        }
        ArrayNode misses = all.putArray("misses");
        r.misses().forEach(m -> misses.addObject().put("case", m.caseId()).put("source", m.source()).put("criterion", m.criterion()).put("planted", m.planted())
                .put("found", m.found()).put("why", m.why()));
    }
}
