package dev.fairlead.audit.write;

import dev.fairlead.audit.statistics.Ratio;
import dev.fairlead.audit.statistics.Trend;
import dev.fairlead.audit.summary.Comparisons;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.Trends;
import java.util.List;
import java.util.Locale;

/** Comparisons and trends in words, the same in every form of an audit. */
public final class SignalWords {
    /** What is to be said above comparisons. */
    public static final String CHANCE =
            "If all residents were alike, at most one audit in ten would name anything by chance.";

    private SignalWords() {}

    /** What is compared. */
    public static String what(Signal s) {
        return switch (s.family()) {
            case BURDEN -> "warnings in all";
            case STOPS -> "stops in all";
            case MISSING -> "missing facts in all";
            case FACT -> SummaryText.words(s.item()) + " missing";
            default -> s.item();
        };
    }

    /** The figures of a signal. */
    public static String figures(Signal s) {
        if (s.family().together()) {
            return Math.round(s.seen()) + " where " + String.format(Locale.ROOT, "%.1f", s.expected())
                    + " were to be expected"
                    + (s.ratio().none() ? "" : "; " + ratio(s.ratio()) + " the others");
        }
        return s.own().count() + " of " + s.own().of() + " cases ("
                + Percent.of(s.own().share()) + ", "
                + Percent.interval(s.own()) + ") against " + s.others().count() + " of "
                + s.others().of() + " (" + Percent.of(s.others().share()) + "); difference "
                + points(s.difference().low()) + " to " + points(s.difference().high()) + " points";
    }

    private static String points(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    /** Such as "1.6 times (1.1–2.3)". */
    public static String ratio(Ratio r) {
        return r.none() ? "–" : String.format(Locale.ROOT, "%.1f times (%.1f–%.1f)", r.value(), r.low(), r.high());
    }

    /** How large a difference would have been seen. */
    public static String detectable(Comparisons c) {
        Comparisons.Detectable d = c.detectable();
        return "A resident with " + d.cases() + " cases would be named four times in five"
                + (Double.isNaN(d.burden())
                        ? ""
                        : " with " + String.format(Locale.ROOT, "%.1f", d.burden())
                                + " times the warnings of the others,")
                + " or with one criterion at " + share(d.other()) + " (one of safety: " + share(d.safety())
                + ") where the others have 3 %. Smaller differences stay hidden, and a fault that all share cannot stand out.";
    }

    private static String share(double rate) {
        return rate >= 1 ? "any rate: never" : Math.round(100 * rate) + " %";
    }

    /** Such as "1.6 (1.1–2.3)". */
    public static String brief(Ratio r) {
        return ratio(r).replace(" times", "");
    }

    /** What "may rise" says in a list of trends. */
    public static final String MAY =
            "May: told alone, this line would count as a change; among as many lines as here one such is not rare.";

    /** A trend, such as "falls: ×0.70 a year (0.50–0.98)". */
    public static String trend(Trends.Line l) {
        Trend t = l.trend();
        if (t == null) {
            return "too few cases, warnings or months to tell";
        }
        String way = l.out()
                ? t.ratio() < 1 ? "falls" : "rises"
                : may(t) ? t.ratio() < 1 ? "may fall" : "may rise" : "no clear change";
        return way + String.format(Locale.ROOT, ": ×%.2f a year (%.2f–%.2f)", t.ratio(), t.low(), t.high());
    }

    /** True where the list has a trend of which {@link #MAY} must be told. */
    public static boolean may(List<Trends.Line> told) {
        return told.stream().anyMatch(l -> l.trend() != null && !l.out() && may(l.trend()));
    }

    private static boolean may(Trend t) {
        return t.low() > 1 || t.high() < 1;
    }
}
