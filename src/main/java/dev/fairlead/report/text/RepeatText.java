package dev.fairlead.report.text;

import dev.fairlead.findings.AssumedError;
import dev.fairlead.findings.Certainty;
import dev.fairlead.findings.RepeatAdvice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What to measure again first, as a short block of plain text. */
final class RepeatText {
    /** Nobody measures more than that again before looking at the result. */
    private static final int MOST = 3;
    /** A measurement that makes outcomes surer by less is not worth the visit. */
    private static final double LEAST = 0.01;
    private static final int CRITERIA = 3;

    private RepeatText() {}

    static String of(Certainty c) {
        List<RepeatAdvice> worth = c.repeats().stream().filter(r -> r.fewerFlips() >= LEAST).toList();
        if (worth.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("\nREPEAT FIRST\n");
        out.append(Wrap.hanging("  ", "Within the errors of measurement " + number(c.expectedFlips())
                + (number(c.expectedFlips()).equals("1.0") ? " outcome is" : " outcomes are") + " expected to be otherwise" + how(c)
                + ". The mean of two readings in place of one makes that fewer:"));
        for (RepeatAdvice r : worth.subList(0, Math.min(MOST, worth.size()))) {
            out.append(Wrap.hanging("  " + hundredths(r.fewerFlips()) + "  ", r.words() + " (" + criteria(r.criteria()) + ")"));
        }
        List<String> told = worth.stream().limit(MOST).map(RepeatAdvice::pointer).toList();
        return out.append(AssumedError.sentence(told).isEmpty() ? "" : Wrap.hanging("  ", AssumedError.sentence(told))).toString();
    }

    private static String how(Certainty c) {
        return c.drawn().map(d -> " (" + d.draws() + " draws, seed " + d.seed() + ")").orElse("");
    }

    private static String criteria(List<String> ids) {
        return String.join(", ", ids.subList(0, Math.min(CRITERIA, ids.size()))) + (ids.size() > CRITERIA ? " and " + (ids.size() - CRITERIA) + " more" : "");
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    private static String hundredths(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
