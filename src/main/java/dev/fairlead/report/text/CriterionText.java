package dev.fairlead.report.text;

import dev.fairlead.drawing.Wrap;
import dev.fairlead.facts.ToothWidth;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.records.CrownWidths;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Reason;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.catalogue.Threshold;
import java.util.Locale;
import java.util.Objects;

/** Criteria as plain text for 80 columns: the list, or one explained. */
public final class CriterionText {
    private CriterionText() {}

    /** All criteria by stage, a line each. */
    public static String list(Catalogue catalogue) {
        StringBuilder out = new StringBuilder();
        for (Stage stage : Stage.values()) {
            out.append(out.isEmpty() ? "" : "\n")
                    .append(stage.word().toUpperCase(Locale.ROOT))
                    .append('\n');
            for (Criterion c : catalogue.criteria(stage)) {
                out.append(Wrap.hanging("  " + c.id() + " ".repeat(Math.max(1, 34 - c.id().length())), c.title()));
            }
        }
        return out.toString();
    }

    /** One criterion with all that is known of it. */
    public static String explain(Criterion c, Catalogue catalogue) {
        StringBuilder out =
                new StringBuilder(Wrap.hanging("", c.id() + " (" + c.stage().word() + ")"));
        out.append(Wrap.hanging("", c.title() + ".")).append('\n');
        out.append(Wrap.hanging("asked       ", dev.fairlead.findings.Asks.of(c, catalogue)));
        out.append(Wrap.hanging("why         ", c.why()));
        if (!c.dispute().isEmpty()) {
            out.append(Wrap.hanging("disputed    ", c.dispute()));
        }
        for (Reason r : c.reasons().values()) {
            out.append(
                    Wrap.hanging(r.stop() ? "stop        " : "caution     ", r.title() + ". What to do: " + r.todo()));
        }
        for (Threshold t : c.thresholds().values()) {
            out.append(Wrap.hanging(
                    "threshold   ",
                    t.name() + " = " + Numbers.text(t) + ": " + t.says() + "; may be set from "
                            + Numbers.text(t.low(), t.unit()) + " to " + Numbers.text(t.high(), t.unit())
                            + "; a value exactly at it "
                            + (t.inclusive() ? "passes" : "does not pass")));
        }
        for (String name : c.limits()) {
            Threshold t = catalogue.threshold(name);
            if (!c.thresholds().containsValue(t)) {
                out.append(Wrap.hanging(
                        "borrowed    ",
                        name + " = " + Numbers.text(t) + ": " + t.says() + "; set with "
                                + name.replaceAll("\\..*", "")));
            }
        }
        if (c.about() == ToothWidth.class) {
            for (Threshold t : c.thresholds().values()) {
                widths(out, t.value());
            }
        }
        for (String key : c.sources()) {
            Source s = Objects.requireNonNull(catalogue.sources().get(key), key);
            out.append(Wrap.hanging(
                    "source      ",
                    s.citation() + " ["
                            + s.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ') + "]"));
        }
        return out.toString();
    }

    /** Which widths are plausible, tooth by tooth. */
    private static void widths(StringBuilder out, double deviations) {
        for (int number = 11; number <= 85; number++) {
            Tooth tooth = Tooth.exists(number) ? Tooth.of(number) : null;
            if (tooth != null && tooth.side() == Side.LEFT && CrownWidths.has(tooth)) {
                CrownWidths.Row row = CrownWidths.of(tooth);
                double reach = deviations * row.sd();
                out.append(Wrap.hanging(
                        "plausible   ",
                        "teeth " + tooth + " and " + tooth.antimere() + ": "
                                + Numbers.text(row.mean() - reach, Unit.MM) + " to "
                                + Numbers.text(row.mean() + reach, Unit.MM) + " (mean "
                                + Numbers.text(row.mean(), Unit.MM) + ")"));
            }
        }
    }
}
