package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.outcome.Attained;
import dev.fairlead.audit.outcome.ClinicFigures;
import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.statistics.Deviations;
import dev.fairlead.audit.statistics.Shrunk;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.model.Clinic;
import java.util.Locale;
import java.util.Map;

/** Whether it came out as planned, and a clinic's own figures: as text for 80 columns and as JSON. */
public final class OutturnText {
    /** How the figures are meant; for every reader of them. */
    public static final String MEANING =
            "Cases that reached holding: measured or counted less predicted before the wire went in. Bias with a t interval,"
                    + " spread with a chi-square interval, both 95 %; within: share inside the interval that was stated, with the exact"
                    + " interval of Clopper & Pearson 1934 (from memory). A spread above 1 stated: intervals were too narrow.";

    /** More of them are told by the page and to programs. */
    private static final int MOST_RESIDENTS = 12;

    private OutturnText() {}

    static void add(Outturn o, StringBuilder out) {
        if (o.cases() == 0) {
            return;
        }
        out.append("\nDID IT COME OUT AS PLANNED (" + cases(o.cases()) + " at holding)\n");
        for (Outturn.Line l : o.lines()) {
            out.append(Wrap.hanging(
                    "  ",
                    l.kind().words() + ", " + cases(l.difference().n()) + ": " + bias(l) + "; " + spread(l) + "; "
                            + within(l) + "."));
            if (l.residents().size() > 1 && l.residents().size() <= MOST_RESIDENTS) {
                out.append(Wrap.hanging(
                        "    by resident: ",
                        String.join(
                                "; ",
                                l.residents().stream()
                                        .map(r -> r.name() + " " + resident(l, r))
                                        .toList())));
            }
        }
        out.append(Wrap.hanging("", MEANING));
    }

    static String cases(int n) {
        return n + (n == 1 ? " case" : " cases");
    }

    private static String unit(Outturn.Line l) {
        String u = l.kind().unit();
        return u.isEmpty() || u.equals("°") ? u : " " + u;
    }

    /** Such as "0.4 mm less than predicted (0.1 to 0.7 less)". */
    public static String bias(Outturn.Line l) {
        Deviations d = l.difference();
        String at = Math.abs(d.bias()) < 0.05
                ? "as predicted on average"
                : one(Math.abs(d.bias())) + unit(l) + (d.bias() < 0 ? " less" : " more") + " than predicted";
        return d.n() < 2 ? at : at + " (" + signed(d.biasLow()) + " to " + signed(d.biasHigh()) + ")";
    }

    /** Spread in its unit and in units of what was stated. */
    public static String spread(Outturn.Line l) {
        Deviations d = l.difference();
        Deviations e = l.standardised();
        return d.n() < 2
                ? "spread not estimable"
                : "spread " + one(d.spread()) + unit(l) + ", "
                        + String.format(
                                Locale.ROOT,
                                "%.2f of the stated (%.2f–%.2f)",
                                e.spread(),
                                e.spreadLow(),
                                e.spreadHigh());
    }

    /** How many lie within what was stated. */
    public static String within(Outturn.Line l) {
        return covered(l.within95(), "95 %") + ", " + covered(l.within50(), "50 %");
    }

    private static String covered(Deviations.Covered c, String level) {
        return c.count() + " of " + c.of() + " within the " + level + " interval (" + Math.round(100 * c.low()) + "–"
                + Math.round(100 * c.high()) + " %)";
    }

    /** Bias of one resident, with its interval from five cases on. */
    public static String resident(Outturn.Line l, Outturn.OfResident r) {
        Deviations d = r.difference();
        return signed(d.bias())
                + unit(l)
                + (d.n() < Outturn.FEWEST
                        ? " (few: " + d.n() + ")"
                        : " (" + signed(d.biasLow()) + " to " + signed(d.biasHigh()) + "; spread " + one(d.spread())
                                + ")");
    }

    private static String one(double v) {
        return String.format(Locale.ROOT, "%.1f", v);
    }

    private static String signed(double v) {
        String text = String.format(Locale.ROOT, "%+.1f", v).replace('-', '−');
        return text.equals("+0.0") || text.equals("−0.0") ? "0.0" : text;
    }

    static void json(Outturn o, ObjectNode root) {
        ArrayNode lines = root.putObject("outturn").put("cases", o.cases()).putArray("lines");
        for (Outturn.Line l : o.lines()) {
            ObjectNode to = lines.addObject()
                    .put("of", l.kind().name().toLowerCase(Locale.ROOT))
                    .put("unit", l.kind().unit());
            deviations(to.putObject("difference"), l.difference());
            deviations(to.putObject("standardised"), l.standardised());
            covered(to.putObject("within95"), l.within95());
            covered(to.putObject("within50"), l.within50());
            ArrayNode tenths = to.putArray("tenths");
            for (int n : l.tenths()) {
                tenths.add(n);
            }
            ArrayNode residents = to.putArray("residents");
            l.residents().forEach(r -> deviations(residents.addObject().put("resident", r.name()), r.difference()));
        }
    }

    private static void covered(ObjectNode o, Deviations.Covered c) {
        o.put("count", c.count()).put("of", c.of()).put("low", c.low()).put("high", c.high());
    }

    private static void deviations(ObjectNode o, Deviations d) {
        o.put("cases", d.n());
        number(o, "bias", d.bias());
        number(o, "biasLow", d.biasLow());
        number(o, "biasHigh", d.biasHigh());
        number(o, "spread", d.spread());
        number(o, "spreadLow", d.spreadLow());
        number(o, "spreadHigh", d.spreadHigh());
    }

    private static void number(ObjectNode o, String name, double v) {
        if (!Double.isNaN(v)) {
            o.put(name, v);
        }
    }

    /** A clinic's own figures for people: published, own, and what is put in force. */
    public static String of(ClinicFigures f) {
        StringBuilder out = new StringBuilder("THE CLINIC'S OWN FIGURES (mean and standard deviation between cases)\n");
        for (Map.Entry<Attained.Kind, ClinicFigures.Drawn> e : f.drawn().entrySet()) {
            ClinicFigures.Drawn d = e.getValue();
            String own = d.own().n() == 0
                    ? "no case tells it"
                    : "own " + two(d.own().mean(), d.own().sd()) + " in "
                            + cases(d.own().n());
            out.append(Wrap.hanging(
                    "  " + e.getKey().words() + ": ",
                    "published "
                            + two(d.published().mean(), d.published().sd()) + "; " + own + "; "
                            + d.shrunk()
                                    .map(OutturnText::shrunk)
                                    .orElse("stays as published: fewer than " + Clinic.FEWEST)));
        }
        return out.append(
                        Wrap.hanging(
                                "",
                                "Drawn together as Gelman and others, Bayesian Data Analysis, 3rd edition, 3.3 (from memory); the published"
                                        + " mean and spread count as ten cases each (common practice, no source). Errors of reading are taken out."
                                        + " These figures are of the cases that were finished and measured: the others may differ."))
                .toString();
    }

    private static String shrunk(Shrunk s) {
        return "in force " + String.format(Locale.ROOT, "%.2f", s.mean()) + ", a next case within "
                + String.format(Locale.ROOT, "%.2f to %.2f", s.mean() - s.nextReach(), s.mean() + s.nextReach())
                + " (95 %); own share " + Math.round(100 * s.share()) + " %";
    }

    private static String two(double mean, double sd) {
        return String.format(Locale.ROOT, "%.2f ± %.2f", mean, sd);
    }

    /** The overlay's {@code clinic.json}. */
    public static String overlay(Clinic c) {
        ObjectNode root = JsonMapper.builder().build().createObjectNode();
        spread(root, "tipping", c.tipping());
        spread(root, "rate", c.rate());
        spread(root, "gain", c.gain());
        return SummaryJson.text(root.put("cases", c.cases()));
    }

    private static void spread(ObjectNode root, String name, Clinic.Spread s) {
        root.putObject(name).put("mean", Math.rint(1e4 * s.mean()) / 1e4).put("sd", Math.rint(1e4 * s.sd()) / 1e4);
    }
}
