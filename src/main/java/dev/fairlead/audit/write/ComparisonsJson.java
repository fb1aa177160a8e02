package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.statistics.Ratio;
import dev.fairlead.audit.statistics.Trend;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Trends;
import java.util.Locale;

/** Residents, what stands out among them, and trends as JSON. */
final class ComparisonsJson {
    private ComparisonsJson() {}

    static void put(ObjectNode root, Summary s) {
        ArrayNode residents = root.putArray("residents");
        for (Comparisons.Line l : s.comparisons().lines()) {
            ObjectNode o = residents
                    .addObject()
                    .put("resident", l.group().name())
                    .put("cases", l.group().cases())
                    .put("withStop", l.group().withStop())
                    .put("few", l.few())
                    .put("warned", l.warnings())
                    .put("expected", l.expected())
                    .put("stops", l.stopped())
                    .put("expectedStops", l.expectedStops());
            ratio(o.putObject("burdenAgainstOthers"), l.burden());
            ratio(o.putObject("stopsAgainstOthers"), l.stops());
            ratio(o.putObject("missingAgainstOthers"), l.missing());
            given(o.putObject("factsGiven"), l.group().completeness());
        }
        given(root.putObject("factsGiven"), s.completeness());
        signals(root.putArray("standsOut"), s.comparisons().out());
        signals(root.putArray("toWatch"), s.comparisons().watch());
        Comparisons.Detectable d = s.comparisons().detectable();
        ObjectNode seen = root.putObject("detectable").put("cases", d.cases());
        number(seen, "burdenRatio", d.burden());
        seen.put("safetyRateAgainst3Percent", d.safety()).put("otherRateAgainst3Percent", d.other());
        ArrayNode trends = root.putArray("trends");
        for (Trends.Line l : s.trends().lines()) {
            ObjectNode o = trends.addObject()
                    .put("of", l.of().name().toLowerCase(Locale.ROOT))
                    .put("name", l.name())
                    .put("cases", l.cases())
                    .put("warned", l.warnings())
                    .put("standsOut", l.out());
            Trend t = l.trend();
            if (t != null) {
                o.put("timesAYear", t.ratio())
                        .put("low", t.low())
                        .put("high", t.high())
                        .put("p", t.p());
            }
        }
    }

    private static void signals(ArrayNode to, java.util.List<Signal> signals) {
        for (Signal s : signals) {
            ObjectNode o = to.addObject()
                    .put("family", s.family().name().toLowerCase(Locale.ROOT))
                    .put("resident", s.resident())
                    .put("item", s.item())
                    .put("seen", s.seen())
                    .put("expected", s.expected())
                    .put("p", s.p());
            if (!s.own().none()) {
                SummaryJson.rate(o.putObject("own"), s.own());
                SummaryJson.rate(o.putObject("others"), s.others());
                o.putObject("difference")
                        .put("value", s.difference().value())
                        .put("low", s.difference().low())
                        .put("high", s.difference().high());
            }
            if (!s.ratio().none()) {
                ratio(o.putObject("ratio"), s.ratio());
            }
        }
    }

    private static void ratio(ObjectNode o, Ratio r) {
        if (!r.none()) {
            o.put("value", r.value()).put("low", r.low()).put("high", r.high());
        }
    }

    private static void given(ObjectNode o, ClusteredRate r) {
        o.put("count", r.count()).put("of", r.of());
        if (!r.none()) {
            o.put("share", r.share()).put("low", r.low()).put("high", r.high());
        }
    }

    private static void number(ObjectNode o, String name, double value) {
        if (!Double.isNaN(value)) {
            o.put(name, value);
        }
    }
}
