package dev.fairlead.audit.page;

import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Gap;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Look;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Trends;
import dev.fairlead.audit.write.OutturnText;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One page for one resident: how the own cases stand beside those of all others, and what to look at first. */
public final class FeedbackSheet {
    private static final int MOST = 4;

    /**
     * All that the sheet shows.
     *
     * @param steps criteria in which the own cases warn most, with the others'
     * @param gaps facts that are missing most in the own cases
     * @param signals what stands out of the own cases, and what is to be watched
     * @param trend over time; empty where too little is known
     * @param outcomes what came of the plans, where own cases tell
     * @param looks own cases among those that need a look first
     */
    public record View(
            Heading heading,
            Comparisons.Line line,
            List<Step> steps,
            List<Missing> gaps,
            List<Signal> signals,
            Optional<Trends.Line> trend,
            List<String> outcomes,
            List<Look> looks,
            String detectable) {}

    /** A criterion: own share of warnings, and that of all others. */
    public record Step(String title, Rate own, Rate others) {}

    /** A fact: in how many own cases it is missing among those that ask for it, and in how many of the others. */
    public record Missing(String pointer, Rate own, Rate others) {}

    private FeedbackSheet() {}

    /** The sheet of one resident as XHTML for paper. */
    public static String of(Heading heading, Summary s, Comparisons.Line line) {
        String name = line.group().name();
        View view = new View(
                heading,
                line,
                steps(s, line),
                gaps(s, line),
                s.comparisons().signals().stream()
                        .filter(x -> x.resident().equals(name))
                        .limit(MOST)
                        .toList(),
                s.trends().lines().stream()
                        .filter(l -> l.of() == Trends.Of.RESIDENT && l.name().equals(name) && !l.tooFew())
                        .findFirst(),
                outcomes(s, name),
                s.looks().stream()
                        .filter(l -> l.row().resident().equals(name) && l.stops() + l.cautions() > 0)
                        .limit(MOST)
                        .toList(),
                dev.fairlead.audit.write.SignalWords.detectable(s.comparisons()));
        StringOutput out = new StringOutput(1 << 14);
        AuditPage.ENGINE.render("audit/feedback.jte", Map.of("v", view), out);
        return out.toString();
    }

    private static List<Step> steps(Summary s, Comparisons.Line line) {
        int[] warned = line.group().warned();
        int[] judged = line.group().judged();
        List<Step> all = new ArrayList<>();
        for (int i = 0; i < warned.length; i++) {
            CriterionCount c = s.criteria().get(i);
            if (warned[i] > 0) {
                all.add(new Step(
                        c.title(),
                        new Rate(warned[i], judged[i]),
                        new Rate(c.warn() - warned[i], c.judged() - judged[i])));
            }
        }
        all.sort(Comparator.comparingLong((Step x) -> -x.own().count()).thenComparing(Step::title));
        return all.subList(0, Math.min(MOST, all.size()));
    }

    private static List<Missing> gaps(Summary s, Comparisons.Line line) {
        List<Missing> all = new ArrayList<>();
        for (Gap g : s.missing()) {
            int own = line.group().missing(g.fact());
            int asked = Math.max(own, line.group().asked(g.fact()));
            if (own > 0) {
                long others = g.rate().count() - own;
                all.add(new Missing(
                        g.pointer(),
                        new Rate(own, asked),
                        new Rate(others, Math.max(others, g.rate().of() - asked))));
            }
        }
        all.sort(Comparator.comparingLong((Missing x) -> -x.own().count()).thenComparing(Missing::pointer));
        return all.subList(0, Math.min(MOST, all.size()));
    }

    private static List<String> outcomes(Summary s, String name) {
        List<String> all = new ArrayList<>();
        for (Outturn.Line l : s.outturn().lines()) {
            l.residents().stream()
                    .filter(r -> r.name().equals(name))
                    .forEach(
                            r -> all.add(l.kind().words() + ": measured less predicted " + OutturnText.resident(l, r)));
        }
        return all;
    }
}
