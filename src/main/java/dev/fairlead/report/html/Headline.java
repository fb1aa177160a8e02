package dev.fairlead.report.html;

import dev.fairlead.findings.Counts;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What the counts of a report come to, in words that promise nothing. */
final class Headline {
    private Headline() {}

    static String of(Report report) {
        Counts n = report.counts();
        int stops = count(report, f -> f.open() && f.weight() == Weight.STOP);
        int cautions = count(report, f -> f.open() && f.weight() == Weight.CAUTION);
        List<String> said = new ArrayList<>();
        if (stops > 0) {
            said.add(plural(stops, "finding says", "findings say")
                    + " stop: a licensed clinician looks before the next step.");
        }
        if (cautions > 0) {
            said.add(plural(cautions, stops > 0 ? "more asks" : "finding asks", stops > 0 ? "more ask" : "findings ask")
                    + " for care.");
        }
        if (stops + cautions == 0) {
            said.add(
                    n.warn() > 0
                            ? "Nothing warns that a waiver does not answer for."
                            : "Nothing that was assessed warns.");
        }
        if (n.notAssessed() > 0) {
            said.add(plural(n.notAssessed(), "criterion could", "criteria could")
                    + " not be assessed for want of facts.");
        }
        if (n.waived() > 0) {
            said.add(plural(n.waived(), "finding is", "findings are") + " waived.");
        }
        if (!report.errors().isEmpty()) {
            said.add("The program made " + plural(report.errors().size(), "error", "errors")
                    + " of its own; what they touch was not judged.");
        }
        return String.join(" ", said);
    }

    private static int count(Report report, Predicate<Finding> which) {
        return (int) report.findings().all().stream().filter(which).count();
    }

    private static String plural(int n, String one, String more) {
        return n + " " + (n == 1 ? one : more);
    }
}
