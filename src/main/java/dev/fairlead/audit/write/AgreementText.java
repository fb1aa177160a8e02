package dev.fairlead.audit.write;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.audit.agree.Agreement;
import dev.fairlead.audit.agree.ReviewPanel;
import dev.fairlead.audit.statistics.ClusteredRate;
import dev.fairlead.audit.statistics.Jackknife;
import dev.fairlead.audit.statistics.Kappa;
import dev.fairlead.audit.statistics.Rate;
import dev.fairlead.drawing.Wrap;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Agreement with a reviewer as text for 80 columns and as JSON. */
public final class AgreementText {
    private static final int MOST = 20;
    /** What the coefficients are; for every reader of them. */
    public static final String MEANING =
            "Kappa: agreement beyond chance, 1 for full agreement (Cohen 1960), over all verdicts; weighted (Cohen 1968) over pairs from pass"
                    + " to stop, credit falling with the distance (linear) or its square. Intervals: 95 %, by the large-sample error of Fleiss, Cohen & Everitt 1969,"
                    + " which is rough below some 50 pairs; below " + Agreement.FEW
                    + " none is given. Verdicts on several criteria of one case are not independent, so"
                    + " the interval over all criteria is too narrow.";

    private AgreementText() {}

    public static String of(Agreement.Result r) {
        StringBuilder out = new StringBuilder("\nAGREEMENT WITH THE REVIEWER           PAIRS   SAME   KAPPA (95 %)\n");
        for (Agreement.Line l : r.lines()) {
            out.append(String.format(
                    Locale.ROOT,
                    "  %-34s %6d %6d   %s%n",
                    name(l.criterion()),
                    l.pairs(),
                    l.same(),
                    kappa(l.plain(), l.pairs())));
            if (kappa(l.plain(), l.pairs()).equals("not estimable")) {
                Rate same = new Rate(l.same(), l.pairs());
                out.append(Wrap.hanging(
                        "    ",
                        "One judge gave a single verdict throughout; the same in " + Percent.of(same.share()) + " ("
                                + Percent.interval(same) + ")."));
            } else if (l.linear().n() >= Agreement.FEW && l.criterion().length() < 4) {
                out.append(Wrap.hanging(
                        "    weighted ",
                        "linear " + kappa(l.linear(), l.linear().n()) + ", quadratic "
                                + kappa(l.quadratic(), l.quadratic().n())));
            }
        }
        out.append(Wrap.hanging("", MEANING));
        if (r.panel().several()) {
            panel(r.panel(), out);
        }
        if (!r.differences().isEmpty()) {
            out.append("\nWHERE THEY DIFFER\n");
            r.differences().stream()
                    .limit(MOST)
                    .forEach(d -> out.append(Wrap.hanging(
                            "  ",
                            d.caseId() + (d.criterion().isEmpty() ? "" : " " + d.criterion()) + ": program "
                                    + d.program().word() + ", reviewer "
                                    + d.reviewer().word())));
            if (r.differ() > MOST) {
                out.append("  and ").append(r.differ() - MOST).append(" more\n");
            }
        }
        if (!r.unknown().isEmpty()) {
            out.append(Wrap.hanging(
                    "",
                    r.unknown().size() + " cases with verdicts were not met or not judged: "
                            + String.join(
                                    ", ",
                                    r.unknown()
                                            .subList(
                                                    0,
                                                    Math.min(MOST, r.unknown().size())))
                            + (r.unknown().size() > MOST ? ", …" : "")));
        }
        return out.toString();
    }

    private static void panel(ReviewPanel.Result p, StringBuilder out) {
        out.append("\nREVIEWERS AMONG EACH OTHER\n");
        out.append(Wrap.hanging("  ", "All reviewers: " + alpha(p.reviewers(), p.same())));
        out.append(Wrap.hanging("  ", "With the program as one more: " + alpha(p.withProgram(), null)));
        for (ReviewPanel.Pair x : p.pairs()) {
            out.append(Wrap.hanging(
                    "  ",
                    x.a() + " and " + x.b() + ": kappa " + coefficient(x.kappa()) + "; same "
                            + Percent.clustered(x.same())));
        }
        if (!p.calibration().isEmpty()) {
            out.append("  To talk over, most disagreed on first:\n");
            p.calibration().forEach(d -> out.append(Wrap.hanging("    " + d.caseId() + "  ", d.on())));
        }
        out.append(Wrap.hanging(
                "",
                "Alpha: agreement of all beyond chance on the scale from pass to stop (Hayes & Krippendorff 2007, from"
                        + " memory); intervals leave out one case at a time."));
    }

    /** Alpha with its interval, or why there is none and how often verdicts were the same. */
    public static String alpha(Jackknife a, @Nullable ClusteredRate same) {
        return "alpha " + coefficient(a) + (same == null ? "" : "; same " + Percent.clustered(same)) + ".";
    }

    /** A coefficient with its interval; "not estimable" where there is none. */
    public static String coefficient(Jackknife j) {
        return j.estimable()
                ? String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", j.value(), j.low(), j.high())
                : "not estimable";
    }

    /** What a line is about. */
    public static String name(String criterion) {
        return criterion.isEmpty() ? "cases as a whole" : criterion.equals("all") ? "all criteria together" : criterion;
    }

    /** The coefficient with its interval; words where there is none. */
    public static String kappa(Kappa k, long pairs) {
        return pairs < Agreement.FEW
                ? "too few"
                : Double.isNaN(k.value()) || Math.abs(k.value()) + k.error() < 1e-9
                        ? "not estimable"
                        : String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", k.value(), k.low(), k.high());
    }

    /** Adds the agreement to a summary. */
    public static void json(Agreement.Result r, ObjectNode root) {
        ObjectNode all = root.putObject("agreement");
        ArrayNode lines = all.putArray("lines");
        for (Agreement.Line l : r.lines()) {
            ObjectNode o = lines.addObject()
                    .put("criterion", l.criterion())
                    .put("pairs", l.pairs())
                    .put("same", l.same());
            kappa(o, "kappa", l.plain());
            kappa(o, "linear", l.linear());
            kappa(o, "quadratic", l.quadratic());
            ObjectNode table = o.putObject("counts");
            for (int i = 0; i < l.words().size(); i++) {
                ObjectNode row = table.putObject(l.words().get(i).word());
                for (int j = 0; j < l.words().size(); j++) {
                    row.put(l.words().get(j).word(), l.counts().get(i).get(j));
                }
            }
        }
        ArrayNode differences = all.put("differ", r.differ()).putArray("differences");
        r.differences()
                .forEach(d -> differences
                        .addObject()
                        .put("case", d.caseId())
                        .put("source", d.source())
                        .put("criterion", d.criterion())
                        .put("program", d.program().word())
                        .put("reviewer", d.reviewer().word()));
        if (r.panel().several()) {
            ObjectNode panel = all.putObject("reviewers");
            coefficient(panel, "alpha", r.panel().reviewers());
            coefficient(panel, "alphaWithProgram", r.panel().withProgram());
            ArrayNode pairs = panel.putArray("pairs");
            for (ReviewPanel.Pair x : r.panel().pairs()) {
                ObjectNode o = pairs.addObject()
                        .put("a", x.a())
                        .put("b", x.b())
                        .put("same", x.same().count())
                        .put("of", x.same().of());
                coefficient(o, "kappa", x.kappa());
            }
            ArrayNode talk = panel.putArray("mostDisagreed");
            r.panel()
                    .calibration()
                    .forEach(d -> talk.addObject()
                            .put("case", d.caseId())
                            .put("items", d.items())
                            .put("on", d.on()));
        }
        ArrayNode unknown = all.putArray("notMet");
        r.unknown().forEach(unknown::add);
    }

    private static void coefficient(ObjectNode o, String name, Jackknife j) {
        if (j.estimable()) {
            o.putObject(name).put("value", j.value()).put("low", j.low()).put("high", j.high());
        }
    }

    private static void kappa(ObjectNode o, String name, Kappa k) {
        if (k.n() >= Agreement.FEW && !Double.isNaN(k.value())) {
            o.putObject(name)
                    .put("value", k.value())
                    .put("error", k.error())
                    .put("low", k.low())
                    .put("high", k.high())
                    .put("pairs", k.n());
        }
    }
}
