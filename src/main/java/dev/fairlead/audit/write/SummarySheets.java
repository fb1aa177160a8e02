package dev.fairlead.audit.write;

import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.statistics.Deviations;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.Gap;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.WaiverReview;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The tables of a summary for a workbook: residents, what stands out, what is missing, waivers, what came of plans. */
final class SummarySheets {
    private final Summary s;

    SummarySheets(Summary s) {
        this.s = s;
    }

    /** Takes one table: its name, its head and its rows of texts, numbers and shares. */
    interface Taker {
        void table(String name, List<String> head, List<Object[]> rows);
    }

    void each(Taker to) {
        to.table(
                "residents",
                List.of(
                        "resident",
                        "cases",
                        "with a stop",
                        "warnings",
                        "expected",
                        "times the others",
                        "low (95 %)",
                        "high (95 %)",
                        "facts given",
                        "low (95 %)",
                        "high (95 %)",
                        "note"),
                residents());
        to.table(
                "signals",
                List.of("list", "resident", "kind", "item", "seen", "expected", "own", "others", "p"),
                signals());
        to.table(
                "missing",
                List.of("fact", "pointer", "missing", "asked", "share", "low (95 %)", "high (95 %)"),
                missing());
        to.table(
                "waivers",
                List.of("case", "resident", "criterion", "by", "date", "expires", "days old", "days left", "reason"),
                waivers());
        to.table(
                "outcomes",
                List.of(
                        "of",
                        "unit",
                        "resident",
                        "cases",
                        "measured less predicted",
                        "low (95 %)",
                        "high (95 %)",
                        "spread",
                        "low (95 %)",
                        "high (95 %)"),
                outcomes());
    }

    private List<Object[]> residents() {
        List<Object[]> all = new ArrayList<>();
        for (Comparisons.Line l : s.comparisons().lines()) {
            ClusteredRate given = l.group().completeness();
            all.add(new Object[] {
                l.group().name(),
                l.group().cases(),
                l.group().withStop(),
                l.warnings(),
                l.expected(),
                l.burden().value(),
                l.burden().low(),
                l.burden().high(),
                XlsxSink.share(given.share()),
                XlsxSink.share(given.low()),
                XlsxSink.share(given.high()),
                l.few() ? "few cases, not compared" : ""
            });
        }
        return all;
    }

    private List<Object[]> signals() {
        List<Object[]> all = new ArrayList<>();
        for (Signal x : s.comparisons().signals()) {
            boolean single = !x.family().together();
            all.add(new Object[] {
                x.out() ? "stands out" : "to watch",
                x.resident(),
                x.family().words(),
                x.item(),
                x.seen(),
                x.expected(),
                XlsxSink.share(single ? x.own().share() : Double.NaN),
                XlsxSink.share(single ? x.others().share() : Double.NaN),
                x.p()
            });
        }
        return all;
    }

    private List<Object[]> missing() {
        List<Object[]> all = new ArrayList<>();
        for (Gap g : s.missing()) {
            all.add(new Object[] {
                SummaryText.words(g.pointer()),
                g.pointer(),
                g.rate().count(),
                g.rate().of(),
                XlsxSink.share(g.rate().share()),
                XlsxSink.share(g.rate().low()),
                XlsxSink.share(g.rate().high())
            });
        }
        return all;
    }

    private List<Object[]> waivers() {
        List<Object[]> all = new ArrayList<>();
        for (WaiverReview.One w : s.waivers().soon()) {
            all.add(new Object[] {
                w.caseId(),
                w.resident(),
                w.waiver().criterion(),
                w.waiver().by(),
                w.waiver().date(),
                w.waiver().expires(),
                w.age(),
                w.left(),
                w.waiver().reason()
            });
        }
        return all;
    }

    private List<Object[]> outcomes() {
        List<Object[]> all = new ArrayList<>();
        for (Outturn.Line l : s.outturn().lines()) {
            all.add(outcome(l, "all", l.difference()));
            l.residents().forEach(r -> all.add(outcome(l, r.name(), r.difference())));
        }
        return all;
    }

    private static Object[] outcome(Outturn.Line l, String who, Deviations d) {
        return new Object[] {
            l.kind().name().toLowerCase(Locale.ROOT),
            l.kind().unit(),
            who,
            d.n(),
            d.bias(),
            d.biasLow(),
            d.biasHigh(),
            d.spread(),
            d.spreadLow(),
            d.spreadHigh()
        };
    }
}
