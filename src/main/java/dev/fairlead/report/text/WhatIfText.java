package dev.fairlead.report.text;

import dev.fairlead.check.whatif.Change;
import dev.fairlead.check.whatif.Difference;
import dev.fairlead.check.whatif.Difference.FindingChange;
import dev.fairlead.check.whatif.GaugeEstimate;
import dev.fairlead.check.whatif.Remedy;
import dev.fairlead.check.whatif.Suggestion;
import dev.fairlead.check.whatif.WhatIf;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import dev.fairlead.measure.working.Say;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Other plans as plain text for 80 columns. */
public final class WhatIfText {
    private static final int FACTS = 4;
    private static final String LEGEND =
            "Only planned values were changed, never a fact of the patient or what is done already. Clearing a warning makes a"
                    + " plan no better by itself: weigh what the change costs.";

    private WhatIfText() {}

    /** What could clear each open warning. */
    public static String of(WhatIf w) {
        StringBuilder out = new StringBuilder();
        Report r = w.checked().report();
        out.append(Wrap.hanging(
                "",
                "Case " + r.subject().id() + ", judged as of stage "
                        + r.stages().get(r.stages().size() - 1).word()
                        + r.subject().date().map(d -> " for " + d).orElse("") + "."));
        if (w.outlooks().isEmpty()) {
            return out.append("No warning is open; nothing has to be cleared.\n\n")
                    .append(Wrap.hanging("", r.caution()))
                    .toString();
        }
        out.append(Wrap.hanging(
                "",
                w.outlooks().size() + (w.outlooks().size() == 1 ? " warning is" : " warnings are") + " open; "
                        + w.tried() + " other plans were measured and judged."));
        if (!w.uncleared().isEmpty()) {
            out.append('\n')
                    .append(Wrap.hanging(
                            "",
                            "Not a candidate for this wire as recorded: no planned value clears "
                                    + w.uncleared().stream()
                                            .map(o -> '"' + o.finding().title() + '"')
                                            .collect(Collectors.joining(", "))
                                    + "."));
        }
        w.outlooks().forEach(o -> outlook(o, out));
        if (w.together().isPresent()) {
            out.append("\nALL TOGETHER\n");
            suggestion("  change    ", w.together().get(), out);
            out.append(Wrap.hanging(
                    "  clears    ", String.join(", ", w.together().get().clears())));
        }
        return out.append('\n')
                .append(Wrap.hanging("", LEGEND))
                .append('\n')
                .append(Wrap.hanging("", r.caution()))
                .toString();
    }

    private static void outlook(Remedy o, StringBuilder out) {
        Finding f = o.finding();
        out.append('\n')
                .append(f.weight() == Weight.STOP ? "STOP     " : "CAUTION  ")
                .append(f.id())
                .append('\n');
        out.append(Wrap.hanging("  seen      ", f.seen()));
        o.single().ifPresent(s -> suggestion("  change    ", s, out));
        o.set().ifPresent(s -> suggestion(o.single().isPresent() ? "  or both   " : "  change    ", s, out));
        if (o.redone()) {
            out.append(Wrap.hanging("  again     ", "Correct it at the bench and measure again."));
        } else if (o.best().isEmpty()) {
            out.append(Wrap.hanging(
                    "  no plan   ",
                    (o.searched() ? "No planned value clears it" : "None was found, though not every set was tried")
                            + (o.rests().isEmpty()
                                    ? "; what decides it was found or done already."
                                    : "; it depends on " + some(o.rests()) + ".")));
        }
        o.best()
                .filter(s -> s.clears().size() > 1)
                .ifPresent(s -> out.append(Wrap.hanging(
                        "  clears    ",
                        "also "
                                + s.clears().stream()
                                        .filter(id -> !id.equals(f.id()))
                                        .collect(Collectors.joining(", ")))));
    }

    private static void suggestion(String head, Suggestion s, StringBuilder out) {
        for (Change c : s.changes()) {
            out.append(Wrap.hanging(head, c.words() + ": " + c.from() + " → " + c.to()));
            head = "  and       ";
        }
        for (Change c : s.follows()) {
            out.append(Wrap.hanging("  gives     ", c.words() + ": " + c.from() + " → " + c.to()));
        }
        s.estimates().forEach(e -> out.append(Wrap.hanging("  estimate  ", estimate(e))));
        for (Difference.NumberChange n : s.costs()) {
            out.append(Wrap.hanging("  changes   ", n.title() + ": " + change(n)));
        }
        for (Side side : Side.values()) {
            Measured spare = s.spare().get(side.ordinal());
            if (spare.known() && spare.value() < 0) {
                out.append(Wrap.hanging(
                        "  costs     ",
                        "the " + side.word() + " side then gets "
                                + Numbers.text(Measured.exact(-spare.value(), spare.unit()))
                                + " less advance than it needs for its teeth"));
            }
        }
        if (!s.near().isEmpty()) {
            out.append(
                    Wrap.hanging("  but       ", "comes within its error of a limit: " + String.join(", ", s.near())));
        }
        if (!s.worsens().isEmpty()) {
            out.append(Wrap.hanging("  but       ", "makes worse: " + String.join(", ", s.worsens())));
        }
    }

    private static String some(List<String> facts) {
        return String.join("; ", facts.subList(0, Math.min(FACTS, facts.size())))
                + (facts.size() > FACTS ? " and " + (facts.size() - FACTS) + " more" : "");
    }

    /** What values that somebody tries would change. */
    public static String of(Difference d) {
        StringBuilder out = new StringBuilder(
                Wrap.hanging("", "Case " + d.before().report().subject().id() + ", with"));
        for (Difference.Given g : d.sets()) {
            out.append(Wrap.hanging(
                    "  ",
                    g.words() + ": " + g.from() + " → " + g.to()
                            + (g.planned() ? "" : "  [not planned: a fact, taken as if it were otherwise]")));
        }
        d.estimates().forEach(e -> out.append(Wrap.hanging("  ", estimate(e))));
        out.append("\nFINDINGS\n");
        if (d.findings().isEmpty()) {
            out.append("  All end as before.\n");
        }
        d.findings().forEach(f -> finding(f, out));
        out.append("\nNUMBERS\n");
        if (d.numbers().isEmpty()) {
            out.append("  All are as before.\n");
        }
        for (Difference.NumberChange n : d.numbers()) {
            out.append(Wrap.hanging("  ", n.title() + ": " + change(n)));
        }
        return out.append('\n')
                .append(Wrap.hanging("", d.after().report().caution()))
                .toString();
    }

    private static String estimate(GaugeEstimate e) {
        String read = "gauge, visit " + e.visit() + ": " + Numbers.text(e.read())
                + " was read on the wire as it was tied in then";
        return e.instead().known()
                ? read + "; for this one " + Numbers.text(e.instead())
                        + ", an estimate by the beam model's ratio and no reading"
                : read + "; for this one the force is unknown, as the beam model has no answer";
    }

    private static void finding(FindingChange f, StringBuilder out) {
        String head = "  " + f.kind().name().toLowerCase(Locale.ROOT)
                + " ".repeat(10 - f.kind().name().length());
        out.append(Wrap.hanging(head, f.after().id() + ": " + ending(f.before()) + " → " + ending(f.after())));
        out.append(Wrap.hanging("            ", f.after().seen()));
    }

    private static String ending(Finding f) {
        return switch (f.outcome()) {
            case WARN -> f.weight() == Weight.STOP ? "STOP" : "CAUTION";
            case NOT_ASSESSED -> "not assessed";
            case PASS -> "pass";
            case DOES_NOT_APPLY -> "does not apply";
        };
    }

    /** To the places that a person reads; to more where the change would not be seen. */
    private static String change(Difference.NumberChange n) {
        if (!n.before().known() || !n.after().known()) {
            return plain(n.before()) + " → " + plain(n.after());
        }
        double before = n.before().value();
        double after = n.after().value();
        Unit unit = n.after().unit();
        if (!Numbers.text(before, unit).equals(Numbers.text(after, unit))) {
            return Numbers.text(before, unit) + " → " + Numbers.text(after, unit);
        }
        String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
        return Say.num(before) + symbol + " → " + Say.num(after) + symbol;
    }

    private static String plain(Measured m) {
        return m.known() ? Numbers.text(m.value(), m.unit()) : Numbers.text(m);
    }
}
