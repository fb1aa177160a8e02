package dev.fairlead.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.check.whatif.Difference;
import dev.fairlead.check.whatif.GaugeEstimate;
import dev.fairlead.check.whatif.Remedy;
import dev.fairlead.check.whatif.Suggestion;
import dev.fairlead.check.whatif.WhatIf;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Report;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;
import java.util.Locale;

/** Other plans as a JSON tree. */
public final class WhatIfJson {
    private static final JsonNodeFactory NEW = JsonNodeFactory.instance;

    private WhatIfJson() {}

    /** What could clear each open warning. */
    public static ObjectNode of(WhatIf w) {
        ObjectNode out = head(w.checked().report());
        ArrayNode warnings = out.putArray("warnings");
        for (Remedy o : w.outlooks()) {
            ObjectNode one = warnings.addObject()
                    .put("id", o.finding().id())
                    .put("weight", o.finding().weight().word())
                    .put("seen", o.finding().seen());
            o.single().ifPresent(s -> one.set("single", suggestion(s)));
            o.set().ifPresent(s -> one.set("set", suggestion(s)));
            strings(one, "restsOn", o.rests());
            one.put("planClearsIt", o.best().isPresent()).put("allTried", o.searched());
        }
        w.together().ifPresent(s -> out.set("together", suggestion(s)));
        return out.put("plansTried", w.tried())
                .put("caution", w.checked().report().caution());
    }

    /** What values that somebody tries would change. */
    public static ObjectNode of(Difference d) {
        ObjectNode out = head(d.before().report());
        ArrayNode sets = out.putArray("set");
        d.sets()
                .forEach(g -> sets.addObject()
                        .put("pointer", g.pointer())
                        .put("words", g.words())
                        .put("from", g.from())
                        .put("to", g.to())
                        .put("planned", g.planned()));
        estimates(out, d.estimates());
        ArrayNode findings = out.putArray("findings");
        d.findings().forEach(f -> {
            ObjectNode one = findings.addObject()
                    .put("change", f.kind().name().toLowerCase(Locale.ROOT))
                    .put("id", f.after().id());
            one.set("before", ending(f.before()));
            one.set("after", ending(f.after()));
        });
        numbers(out.putArray("numbers"), d.numbers());
        return out.put("caution", d.after().report().caution());
    }

    private static ObjectNode head(Report r) {
        ObjectNode out = NEW.objectNode().put("format", r.format()).put("tool", r.tool());
        out.putObject("rulebase")
                .put("version", r.rulebase().version())
                .put("hash", r.rulebase().hash());
        ObjectNode subject = out.putObject("case")
                .put("id", r.subject().id())
                .put("hash", r.subject().hash());
        r.subject().date().ifPresent(d -> subject.put("date", d.toString()));
        return out;
    }

    private static ObjectNode suggestion(Suggestion s) {
        ObjectNode out = NEW.objectNode();
        ArrayNode changes = out.putArray("changes");
        s.changes()
                .forEach(c -> changes.addObject()
                        .put("pointer", c.pointer())
                        .put("words", c.words())
                        .put("from", c.from())
                        .put("to", c.to()));
        estimates(out, s.estimates());
        out.put("steps", s.steps());
        strings(out, "clears", s.clears());
        strings(out, "worsens", s.worsens());
        strings(out, "near", s.near());
        numbers(out.putArray("costs"), s.costs());
        ObjectNode spare = out.putObject("plannedLessNeeded");
        for (Side side : Side.values()) {
            if (s.spare().get(side.ordinal()).applies()) {
                spare.set(side.word(), value(s.spare().get(side.ordinal())));
            }
        }
        return out;
    }

    private static void numbers(ArrayNode out, List<Difference.NumberChange> all) {
        for (Difference.NumberChange n : all) {
            ObjectNode one = out.addObject().put("id", n.id()).put("title", n.title());
            one.set("before", value(n.before()));
            one.set("after", value(n.after()));
        }
    }

    private static void estimates(ObjectNode out, List<GaugeEstimate> all) {
        ArrayNode list = out.putArray("gaugeEstimates");
        for (GaugeEstimate e : all) {
            ObjectNode one = list.addObject().put("visit", e.visit());
            one.set("read", value(e.read()));
            one.set("instead", value(e.instead()));
        }
    }

    private static ObjectNode ending(Finding f) {
        return NEW.objectNode()
                .put("outcome", f.outcome().word())
                .put("weight", f.weight().word())
                .put("seen", f.seen());
    }

    private static ObjectNode value(Measured m) {
        ObjectNode out =
                NEW.objectNode().put("state", m.known() ? "known" : m.applies() ? "unknown" : "does-not-apply");
        if (m.known()) {
            out.set("value", ReportJson.number(m.value()));
            out.set("error", ReportJson.number(m.sd()));
            out.put("unit", m.unit().symbol());
        }
        return out;
    }

    private static void strings(ObjectNode out, String key, List<String> values) {
        ArrayNode list = out.putArray(key);
        values.forEach(list::add);
    }
}
