package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.compare.RulesComparison;
import dev.fairlead.audit.compare.Sweep;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.rules.catalogue.Threshold;
import java.util.Locale;
import java.util.Map;

/** Comparisons and sweeps as text for 80 columns and as JSON. */
public final class CompareText {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int BAR = 30;

    private CompareText() {}

    /** {@code a} and {@code b} say what was compared. */
    public static String of(String a, String b, RulesComparison.Result r) {
        StringBuilder out = new StringBuilder();
        out.append(Wrap.hanging("", "A: " + a + ". B: " + b + "."));
        out.append(Wrap.hanging(
                "",
                r.changed() + " of " + r.cases() + " cases change in at least one criterion."
                        + (r.unread() > 0 ? " " + r.unread() + " could not be read." : "")));
        out.append("\nCRITERION                            JUDGED  WARN A  WARN B  GAINED    LOST\n");
        r.lines().stream().filter(RulesComparison.Line::changed).forEach(l -> {
            out.append(String.format(
                    Locale.ROOT,
                    "  %-34s %6d %7d %7d %7d %7d%n",
                    l.criterion(),
                    l.judged(),
                    l.warnsA(),
                    l.warnsB(),
                    l.gained(),
                    l.lost()));
            l.changes()
                    .forEach((change, n) -> out.append("      ")
                            .append(change)
                            .append(": ")
                            .append(n)
                            .append('\n'));
            if (!l.examples().isEmpty()) {
                out.append(Wrap.hanging(
                        "      such as ",
                        String.join(
                                "; ",
                                l.examples().stream()
                                        .map(e ->
                                                e.caseId() + " (" + e.from() + " → " + e.to() + ", " + e.source() + ")")
                                        .toList())));
            }
        });
        if (r.lines().stream().noneMatch(RulesComparison.Line::changed)) {
            out.append("  nothing changes\n");
        }
        r.reasons().forEach(x -> out.append(Wrap.hanging("  not read ", x)));
        return out.toString();
    }

    public static String of(Sweep.Result r) {
        Threshold t = r.threshold();
        StringBuilder out = new StringBuilder();
        out.append(Wrap.hanging(
                "",
                "Threshold " + t.name() + ": " + t.says() + ". In force " + number(t.value()) + " "
                        + t.unit().symbol() + ", allowed from " + number(t.low()) + " to " + number(t.high()) + ". "
                        + r.cases() + " cases." + (r.unread() > 0 ? " " + r.unread() + " could not be read." : "")));
        for (Sweep.Curve c : r.curves()) {
            out.append("\n").append(c.criterion()).append("\n     VALUE    WARN   JUDGED    RATE   95 % INTERVAL\n");
            double most = c.points().stream()
                    .filter(p -> !p.warnRate().none())
                    .mapToDouble(p -> p.warnRate().share())
                    .max()
                    .orElse(1);
            for (Sweep.Point p : c.points()) {
                String bar = p.warnRate().none() || most == 0
                        ? ""
                        : "#".repeat((int) Math.round(BAR * p.warnRate().share() / most));
                out.append(String.format(
                                Locale.ROOT,
                                "%1s %8s %7d %8d %7s %15s %s%n",
                                Math.abs(p.value() - t.value()) < 1e-9 ? "*" : "",
                                number(p.value()),
                                p.warnRate().count(),
                                p.warnRate().of(),
                                Percent.of(p.warnRate().share()),
                                Percent.interval(p.warnRate()),
                                bar)
                        .replaceAll(" +\\n", "\n"));
            }
        }
        return out.append("* in force now\n").toString();
    }

    public static ObjectNode json(String a, String b, RulesComparison.Result r) {
        ObjectNode root = JSON.createObjectNode()
                .put("format", SummaryJson.FORMAT)
                .put("a", a)
                .put("b", b)
                .put("cases", r.cases())
                .put("changed", r.changed())
                .put("unread", r.unread());
        ArrayNode lines = root.putArray("criteria");
        for (RulesComparison.Line l : r.lines()) {
            ObjectNode o = lines.addObject()
                    .put("criterion", l.criterion())
                    .put("judged", l.judged())
                    .put("warnsA", l.warnsA())
                    .put("warnsB", l.warnsB())
                    .put("gained", l.gained())
                    .put("lost", l.lost());
            ObjectNode changes = o.putObject("changes");
            for (Map.Entry<String, Long> e : l.changes().entrySet()) {
                changes.put(e.getKey(), e.getValue());
            }
            ArrayNode examples = o.putArray("examples");
            l.examples()
                    .forEach(e -> examples.addObject()
                            .put("case", e.caseId())
                            .put("source", e.source())
                            .put("from", e.from())
                            .put("to", e.to()));
        }
        return root;
    }

    public static ObjectNode json(Sweep.Result r) {
        ObjectNode root = JSON.createObjectNode()
                .put("format", SummaryJson.FORMAT)
                .put("threshold", r.threshold().name())
                .put("unit", r.threshold().unit().symbol())
                .put("inForce", r.threshold().value())
                .put("low", r.threshold().low())
                .put("high", r.threshold().high())
                .put("cases", r.cases())
                .put("unread", r.unread());
        ArrayNode curves = root.putArray("curves");
        for (Sweep.Curve c : r.curves()) {
            ArrayNode points =
                    curves.addObject().put("criterion", c.criterion()).putArray("points");
            for (Sweep.Point p : c.points()) {
                SummaryJson.rate(
                        points.addObject()
                                .put("value", p.value())
                                .put("stop", p.stop())
                                .put("caution", p.caution())
                                .put("notAssessed", p.notAssessed())
                                .putObject("warnRate"),
                        p.warnRate());
            }
        }
        return root;
    }

    /** A number without dust. */
    public static String number(double v) {
        return new java.math.BigDecimal(v)
                .round(new java.math.MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
