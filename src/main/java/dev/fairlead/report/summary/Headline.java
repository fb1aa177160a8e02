package dev.fairlead.report.summary;

import dev.fairlead.findings.Counts;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.Weight;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Predicate;

/** The first sentences of a report: how much is to be settled before the next step, and who decides. */
public final class Headline {
    private Headline() {}

    /** Such as "2 things to settle before the next step: 1 stop, 1 caution." and what that means for presenting. */
    public static String of(Report report) {
        return settle(report) + " " + meaning(report);
    }

    /** How much is to be settled. */
    public static String settle(Report report) {
        int stops = count(report, f -> f.open() && f.weight() == Weight.STOP);
        int cautions = count(report, f -> f.open() && f.weight() == Weight.CAUTION);
        int limit = count(report, Finding::onTheLimit);
        int all = stops + cautions + limit;
        if (all == 0) {
            Counts n = report.counts();
            return n.warn() > 0 ? "Every warning is waived." : "Nothing that was assessed warns.";
        }
        List<String> kinds = new ArrayList<>();
        if (stops > 0) {
            kinds.add(plural(stops, "stop", "stops"));
        }
        if (cautions > 0) {
            kinds.add(plural(cautions, "caution", "cautions"));
        }
        if (limit > 0) {
            kinds.add(limit + " on the limit");
        }
        return plural(all, "thing", "things") + " to settle before the next step: " + String.join(", ", kinds) + ".";
    }

    /** What that means for whoever is to present the case, and what else is open. */
    public static String meaning(Report report) {
        Counts n = report.counts();
        boolean stops = count(report, f -> f.open() && f.weight() == Weight.STOP) > 0;
        boolean others = count(report, f -> f.open() || f.onTheLimit()) > 0;
        List<String> said = new ArrayList<>();
        if (stops) {
            said.add("Do not go on: a licensed clinician looks first.");
        } else if (others) {
            said.add("Present it with an answer to each.");
        } else if (n.notAssessed() == 0 && !report.subject().reach().cut()) {
            said.add("Ready to present; the clinician decides whether to go on.");
        }
        if (n.notAssessed() > 0) {
            said.add(plural(n.notAssessed(), "criterion", "criteria")
                    + " could not be assessed because " + why(report)
                    + (stops || others ? "." : ": get these before presenting."));
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

    /** Why criteria wait: what is there and cannot be used is not called missing. */
    private static String why(Report report) {
        EnumSet<Missing.Kind> kinds = EnumSet.noneOf(Missing.Kind.class);
        for (Finding f : report.findings().all()) {
            f.missing().forEach(m -> kinds.add(m.kind()));
        }
        List<String> said = new ArrayList<>();
        boolean facts = kinds.contains(Missing.Kind.NOT_ENTERED);
        boolean second = kinds.contains(Missing.Kind.SECOND_READING);
        if (second) {
            said.add((facts ? "facts and " : "") + "second readings are missing");
        } else if (facts || kinds.isEmpty()) {
            said.add("facts are missing");
        }
        if (kinds.contains(Missing.Kind.CONTRADICTED)) {
            said.add("facts contradict one another");
        }
        if (kinds.contains(Missing.Kind.FILM_NOT_READ)) {
            said.add("the panoramic film was not read");
        }
        int last = said.size() - 1;
        return last == 0 ? said.get(0) : String.join(", ", said.subList(0, last)) + " and " + said.get(last);
    }

    private static int count(Report report, Predicate<Finding> which) {
        return (int) report.findings().all().stream().filter(which).count();
    }

    private static String plural(int n, String one, String more) {
        return n + " " + (n == 1 ? one : more);
    }
}
