package dev.fairlead.audit.write;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Group;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Trouble;
import dev.fairlead.findings.Report;
import java.util.List;

/** An audit's summary as JSON, for programs. */
public final class SummaryJson {
    public static final int FORMAT = 2;
    private static final JsonMapper JSON = JsonMapper.builder()
            .defaultPrettyPrinter(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")))
            .build();

    private SummaryJson() {}

    /** The text of a tree, with a line break at the end. */
    public static String text(ObjectNode tree) {
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(tree) + "\n";
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException("a tree can always be written", e);
        }
    }

    /** The summary as a tree, to which a caller may add. */
    public static ObjectNode of(Heading h, Summary s) {
        ObjectNode root = JSON.createObjectNode();
        root.put("format", FORMAT).put("tool", h.tool());
        ObjectNode rules = root.putObject("rulebase")
                .put("version", h.rulebase().version())
                .put("hash", h.rulebase().hash());
        rules.set("changed", JSON.valueToTree(h.rulebase().changed()));
        root.put("day", h.day()).put("stage", h.stage()).put("forces", h.forces());
        root.set("paths", JSON.valueToTree(h.paths()));
        root.put("judged", s.judged()).put("withDoubts", s.withDoubts()).put("withoutResident", s.unnamed());
        ArrayNode stages = root.putArray("stages");
        s.stages()
                .forEach(c -> stages.addObject()
                        .put("stage", c.stage().word())
                        .put("cases", c.cases())
                        .put("stop", c.stop())
                        .put("caution", c.caution())
                        .put("waiting", c.waiting())
                        .put("clear", c.clear()));
        ArrayNode criteria = root.putArray("criteria");
        for (CriterionCount c : s.criteria()) {
            ObjectNode o = criteria.addObject()
                    .put("criterion", c.id())
                    .put("stage", c.stage().word())
                    .put("stop", c.stop())
                    .put("caution", c.caution())
                    .put("waived", c.waived())
                    .put("notAssessed", c.notAssessed())
                    .put("pass", c.pass())
                    .put("doesNotApply", c.doesNotApply())
                    .put("failed", c.failed());
            rate(o.putObject("warnRate"), c.warnRate());
            rate(o.putObject("notAssessedRate"), c.openRate());
        }
        double[] rates = s.rates();
        groups(root.putArray("periods"), s.periods(), rates);
        ComparisonsJson.put(root, s);
        ArrayNode missing = root.putArray("missing");
        s.missing()
                .forEach(n -> missing.addObject()
                        .put("pointer", n.pointer())
                        .put("cases", n.rate().count())
                        .put("asked", n.rate().of()));
        ObjectNode given = root.putObject("factsGiven");
        s.givenByStep().forEach((step, r) -> {
            if (!r.none()) {
                given.putObject(step.word())
                        .put("given", r.count())
                        .put("asked", r.of())
                        .put("low", r.low())
                        .put("high", r.high());
            }
        });
        OutturnText.json(s.outturn(), root);
        ArrayNode waivers = root.putArray("waivers");
        s.waivers()
                .soon()
                .forEach(w -> waivers.addObject()
                        .put("case", w.caseId())
                        .put("resident", w.resident())
                        .put("criterion", w.waiver().criterion())
                        .put("by", w.waiver().by())
                        .put("date", w.waiver().date())
                        .put("expires", w.waiver().expires())
                        .put("reason", w.waiver().reason())
                        .put("age", w.age())
                        .put("left", w.left()));
        ArrayNode notes = root.putArray("waiversThatDoNotHold");
        s.notes()
                .forEach(n -> n.criteria()
                        .forEach(c -> notes.addObject()
                                .put("kind", n.kind())
                                .put("criterion", c.name())
                                .put("count", c.count())));
        ArrayNode looks = root.putArray("looks");
        s.looks()
                .forEach(l -> looks.addObject()
                        .put("case", l.row().id())
                        .put("source", l.row().source())
                        .put("stage", l.row().reached().word())
                        .put("resident", l.row().resident())
                        .put(
                                "course",
                                l.row()
                                        .course()
                                        .name()
                                        .toLowerCase(java.util.Locale.ROOT)
                                        .replace('_', '-'))
                        .put("stops", l.stops())
                        .put("cautions", l.cautions())
                        .put("notAssessed", l.open())
                        .put("new", l.fresh()));
        s.since()
                .ifPresent(x -> root.putObject("sinceLastAudit")
                        .put("newCases", x.newCases())
                        .put("newWarnings", x.fresh())
                        .put("noLongerOpen", x.gone()));
        trouble(root, "unreadable", s.unread());
        trouble(root, "tooLong", s.tooLong());
        trouble(root, "failed", s.failed());
        trouble(root, "earlierStates", s.earlier());
        trouble(root, "errors", s.errors());
        trouble(root, "lostCells", s.lost());
        root.set("alikeCodes", JSON.valueToTree(s.alikeCodes()));
        root.put("caution", Report.CAUTION);
        return root;
    }

    static void rate(ObjectNode o, Rate r) {
        o.put("count", r.count()).put("of", r.of());
        if (!r.none()) {
            o.put("share", r.share()).put("low", r.low()).put("high", r.high());
        }
    }

    private static void groups(ArrayNode to, List<Group> groups, double[] rates) {
        for (Group g : groups) {
            to.addObject()
                    .put("name", g.name())
                    .put("cases", g.cases())
                    .put("judged", java.util.Arrays.stream(g.judged()).sum())
                    .put("warned", g.warnings())
                    .put("expected", g.expected(rates))
                    .put("factsGiven", g.completeness().count())
                    .put("factsAsked", g.completeness().of())
                    .put("note", g.note());
        }
    }

    private static void trouble(ObjectNode root, String name, Trouble t) {
        ObjectNode o = root.putObject(name).put("count", t.count());
        ArrayNode first = o.putArray("first");
        t.first().forEach(x -> first.addObject().put("source", x.source()).put("reason", x.reason()));
    }
}
