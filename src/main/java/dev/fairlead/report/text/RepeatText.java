package dev.fairlead.report.text;

import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.AssumedError;
import dev.fairlead.findings.Certainty;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.RepeatAdvice;
import java.util.ArrayList;
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
        List<RepeatAdvice> worth = new ArrayList<>();
        for (RepeatAdvice r : c.repeats()) {
            if (r.fewerFlips() >= LEAST && worth.size() < MOST) {
                worth.add(r);
            }
        }
        if (worth.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("\nREPEAT FIRST\n");
        out.append(Wrap.hanging(
                "  ",
                "Within the errors of measurement " + number(c.expectedFlips())
                        + (number(c.expectedFlips()).equals("1.0") ? " outcome is" : " outcomes are")
                        + " expected to be otherwise" + how(c)
                        + ". The mean of two readings in place of one makes that fewer:"));
        List<String> told = new ArrayList<>();
        for (RepeatAdvice r : worth) {
            told.add(r.pointer());
            out.append(Wrap.hanging(
                    "  " + hundredths(r.fewerFlips()) + "  ", r.words() + " (" + criteria(r.criteria()) + ")"));
        }
        String assumed = AssumedError.sentence(told);
        return out.append(assumed.isEmpty() ? "" : Wrap.hanging("  ", assumed)).toString();
    }

    private static String how(Certainty c) {
        return c.drawn().isEmpty()
                ? ""
                : " (" + c.drawn().get().draws() + " draws, seed "
                        + c.drawn().get().seed() + ")";
    }

    private static String criteria(List<String> ids) {
        return String.join(", ", ids.subList(0, Math.min(CRITERIA, ids.size())))
                + (ids.size() > CRITERIA ? " and " + (ids.size() - CRITERIA) + " more" : "");
    }

    private static String number(double value) {
        return Numbers.plain(value, 1);
    }

    private static String hundredths(double value) {
        return Numbers.plain(value, 2);
    }
}
