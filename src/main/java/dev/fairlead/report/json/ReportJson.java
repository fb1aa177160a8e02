package dev.fairlead.report.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.findings.AssumedError;
import dev.fairlead.findings.Certainty;
import dev.fairlead.findings.Counts;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.InputNote;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.PlaceFinding;
import dev.fairlead.findings.RepeatAdvice;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.SeenValue;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Source;
import java.util.List;
import java.util.Locale;

/**
 * A report as a JSON tree; numbers are rounded to what binary arithmetic can keep, so that equal reports are equal
 * bytes.
 */
public final class ReportJson {
    private static final JsonNodeFactory NEW = JsonNodeFactory.instance;
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private ReportJson() {}

    /** The report as indented text with a line break at its end. */
    public static String text(Report report, boolean all) {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(of(report, all)) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree made here can always be written", e);
        }
    }

    /** The report as a tree; without {@code all}, findings that do not apply are left to the counts. */
    public static ObjectNode of(Report r, boolean all) {
        ObjectNode out = NEW.objectNode();
        out.put("format", r.format()).put("tool", r.tool());
        ObjectNode rulebase = out.putObject("rulebase")
                .put("version", r.rulebase().version())
                .put("hash", r.rulebase().hash());
        ObjectNode changed = rulebase.putObject("changed");
        r.rulebase().changed().forEach((name, value) -> changed.set(name, number(value)));
        ObjectNode subject = out.putObject("case")
                .put("id", r.subject().id())
                .put("hash", r.subject().hash());
        r.subject().date().ifPresent(d -> subject.put("date", d.toString()));
        r.subject().reach().stated().ifPresent(s -> subject.put("stage", s.word()));
        subject.put("recorded", r.subject().reach().recorded().word());
        subject.put("judged", r.subject().reach().judged().word());
        subject.put("note", r.subject().note());
        ArrayNode stages = out.putArray("stages");
        r.stages().forEach(s -> stages.add(s.word()));
        out.set("counts", counts(r.counts()));
        ArrayNode findings = out.putArray("findings");
        r.findings().all().stream()
                .filter(f -> all || f.outcome() != dev.fairlead.rules.catalogue.Status.DOES_NOT_APPLY)
                .forEach(f -> findings.add(finding(f)));
        ArrayNode notes = out.putArray("waiversThatDoNotHold");
        r.findings()
                .waiverNotes()
                .forEach(n -> notes.addObject()
                        .put("pointer", n.pointer())
                        .put("criterion", n.criterion())
                        .put("kind", n.kind().word())
                        .put("text", n.text()));
        out.set("input", input(r.input()));
        ArrayNode errors = out.putArray("ownErrors");
        r.errors()
                .forEach(e -> errors.addObject().put("criterion", e.criterion()).put("message", e.message()));
        ArrayNode workings = out.putArray("measurements");
        r.workings().forEach(w -> workings.add(working(w)));
        r.certainty().ifPresent(c -> out.set("certainty", certainty(c)));
        return out.put("caution", r.caution());
    }

    /** How sure the findings are, and what to measure again. */
    public static ObjectNode certainty(Certainty c) {
        ObjectNode out = NEW.objectNode();
        out.set("expectedFlips", number(c.expectedFlips()));
        out.put("method", c.drawn().isPresent() ? "simulation" : "first-order");
        c.drawn()
                .ifPresent(
                        d -> out.put("draws", d.draws()).put("seed", d.seed()).put("measurements", d.measurements()));
        ArrayNode repeats = out.putArray("repeatFirst");
        for (RepeatAdvice r : c.repeats()) {
            ObjectNode one = repeats.addObject().put("pointer", r.pointer()).put("words", r.words());
            one.set("fewerFlips", number(r.fewerFlips()));
            ArrayNode criteria = one.putArray("criteria");
            r.criteria().forEach(criteria::add);
            AssumedError.of(r.pointer())
                    .ifPresent(e -> one.putObject("assumedError")
                            .put("sd", e.sd())
                            .put("unit", e.unit().symbol())
                            .put("source", e.source()));
        }
        return out.put("meaning", Certainty.MEANING);
    }

    /** Counts by outcome. */
    public static ObjectNode counts(Counts n) {
        return NEW.objectNode()
                .put("stop", n.stop())
                .put("caution", n.caution())
                .put("notAssessed", n.notAssessed())
                .put("pass", n.pass())
                .put("doesNotApply", n.doesNotApply())
                .put("waived", n.waived())
                .put("close", n.close());
    }

    /** Problems of the input. */
    public static ArrayNode input(List<InputNote> notes) {
        ArrayNode out = NEW.arrayNode();
        notes.forEach(n -> out.addObject()
                .put("severity", n.severity().word())
                .put("pointer", n.pointer())
                .put("line", n.line())
                .put("column", n.column())
                .put("text", n.text()));
        return out;
    }

    private static ObjectNode finding(Finding f) {
        ObjectNode out = NEW.objectNode()
                .put("id", f.id())
                .put("stage", f.stage().word())
                .put("outcome", f.outcome().word())
                .put("weight", f.weight().word())
                .put("title", f.title());
        if (!f.under().isEmpty()) {
            out.put("under", f.under());
        }
        out.put("asks", f.asks()).put("seen", f.seen());
        ArrayNode places = out.putArray("places");
        f.places().forEach(p -> places.add(place(p)));
        out.put("why", f.why()).put("todo", f.todo());
        ArrayNode sources = out.putArray("sources");
        f.sources().forEach(s -> sources.add(source(s)));
        if (!f.dispute().isEmpty()) {
            out.put("dispute", f.dispute());
        }
        out.put("close", f.close());
        f.flip().ifPresent(p -> out.set("flip", number(p)));
        out.set("missing", missing(f.missing()));
        f.waiver()
                .ifPresent(w -> out.putObject("waiver")
                        .put("pointer", w.pointer())
                        .put("reason", w.reason())
                        .put("by", w.by().word())
                        .put("date", w.date().toString())
                        .put("expires", w.expires().toString()));
        ArrayNode used = out.putArray("usedFields");
        f.usedFields().forEach(used::add);
        return out.put("fingerprint", f.fingerprint());
    }

    private static ObjectNode place(PlaceFinding p) {
        ObjectNode out = NEW.objectNode()
                .put("pointer", p.pointer())
                .put("words", p.words())
                .put("outcome", p.outcome().word())
                .put("weight", p.weight().word())
                .put("text", p.text());
        ArrayNode values = out.putArray("values");
        for (SeenValue v : p.values()) {
            ObjectNode value = values.addObject().put("threshold", v.limitName());
            value.set("value", number(v.value()));
            value.set("error", number(v.error()));
            value.put("unit", v.unit().symbol());
            value.set("limit", number(v.limit()));
            value.set("margin", number(v.margin()));
            value.put("close", v.close());
        }
        out.set("missing", missing(p.missing()));
        return out.put("close", p.close());
    }

    private static ArrayNode missing(List<Missing> missing) {
        ArrayNode out = NEW.arrayNode();
        missing.forEach(m -> {
            ObjectNode one = out.addObject().put("pointer", m.pointer()).put("words", m.words());
            if (m.kind() != Missing.Kind.NOT_ENTERED) {
                one.put("kind", m.kind().word());
            }
        });
        return out;
    }

    private static ObjectNode source(Source s) {
        return NEW.objectNode()
                .put("key", s.key())
                .put("citation", s.citation())
                .put("kind", s.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** One worked number. */
    public static ObjectNode working(Working w) {
        ObjectNode out =
                NEW.objectNode().put("id", w.id()).put("group", w.group()).put("title", w.title());
        Measured m = w.value();
        out.put("state", m.known() ? "known" : m.applies() ? "unknown" : "does-not-apply");
        if (m.known()) {
            out.set("value", number(m.value()));
            out.set("error", number(m.sd()));
            out.put("unit", m.unit().symbol());
        } else {
            ArrayNode missing = out.putArray("missing");
            m.missing().forEach(missing::add);
        }
        out.put("formula", w.formula()).put("substituted", w.substituted());
        ArrayNode sources = out.putArray("sources");
        w.sources().forEach(sources::add);
        return out.put("note", w.note());
    }

    /** A number rounded to what binary arithmetic can keep; whole numbers without a point. */
    public static com.fasterxml.jackson.databind.JsonNode number(double value) {
        double rounded = java.math.BigDecimal.valueOf(value)
                .round(new java.math.MathContext(9))
                .doubleValue();
        return rounded == Math.rint(rounded) && Math.abs(rounded) < 1e9
                ? NEW.numberNode((long) rounded)
                : NEW.numberNode(rounded);
    }
}
