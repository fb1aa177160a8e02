package dev.fairlead.report.text;

import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.AssumedError;
import dev.fairlead.findings.Certainty;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.InputNote;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.RepeatAdvice;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.WaiverNote;
import dev.fairlead.model.Stage;
import dev.fairlead.report.summary.Chance;
import dev.fairlead.report.summary.Decides;
import dev.fairlead.report.summary.Headline;
import dev.fairlead.report.summary.MissingFact;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.Judgement.OwnError;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A report as plain text for 80 columns. The first page tells whether to present the case, what decides, what to get
 * and what to measure again first; then come warnings in full where that page had no room for them, and passes in a
 * line a stage.
 */
public final class ReportText {
    /** How much of a report is told. */
    public enum Detail {
        /** The headline and what decides, in {@link #BRIEF} lines. */
        BRIEF,
        /** All that warns or is missing, and how many pass. */
        USUAL,
        /** Each pass as well, and what does not apply. */
        ALL
    }

    /** Lines of a page as a terminal or a printer has them. */
    static final int PAGE = 60;

    static final int BRIEF = 20;

    private static final String SHORT_CAUTION =
            Wrap.hanging("", Report.CAUTION.substring(0, Report.CAUTION.indexOf('.') + 1));

    private static final int MISSING = 6;
    private static final int CRITERIA = 3;

    private final Report report;
    private final List<Finding> warnings;

    private ReportText(Report report) {
        this.report = report;
        this.warnings = Decides.settle(report);
    }

    /** A report with so much detail. */
    public static String of(Report report, Detail detail) {
        ReportText text = new ReportText(report);
        return detail == Detail.BRIEF ? text.brief() : text.whole(detail == Detail.ALL);
    }

    private String brief() {
        StringBuilder out = new StringBuilder(head()).append(warnings.isEmpty() ? "" : "\n");
        List<String> all = warnings.stream().map(FindingText::shortly).toList();
        String rest = errors() + doubted() + SHORT_CAUTION;
        int shown = 0;
        for (int left = BRIEF - lines(out) - lines(rest) - 1;
                shown < all.size() && lines(all.get(shown)) <= left;
                shown++) {
            out.append(all.get(shown));
            left -= lines(all.get(shown));
        }
        return out.append(
                        shown == all.size()
                                ? ""
                                : "and " + (all.size() - shown) + " more; leave --brief out to see them.\n")
                .append(rest)
                .toString();
    }

    /** Where the file itself may hold a slip: nothing that was judged is surer than what was read. */
    private String doubted() {
        List<String> places = report.input().stream()
                .map(InputNote::pointer)
                .distinct()
                .map(p -> p.isEmpty() ? "the file" : p)
                .toList();
        return places.isEmpty()
                ? ""
                : Wrap.hanging(
                        "",
                        "DOUBTED in the case file: " + String.join(", ", places.subList(0, Math.min(3, places.size())))
                                + (places.size() > 3 ? " and " + (places.size() - 3) + " more" : "")
                                + "; leave --brief out to see why.");
    }

    private String whole(boolean all) {
        StringBuilder first = new StringBuilder(head());
        String errors = errors();
        String rest = getFirst() + again();
        String full = decides(true);
        boolean fits = lines(first) + lines(errors) + lines(full) + lines(rest) <= PAGE;
        first.append(errors).append(fits ? full : decides(false)).append(rest);
        if (!fits) {
            first.append("\nEACH IN FULL\n");
            warnings.forEach(f -> first.append(FindingText.inFull(f)).append('\n'));
            first.setLength(first.length() - 1);
        }
        first.append(all ? "" : folded());
        if (all) {
            report.stages().forEach(s -> first.append(stage(s)));
        }
        return first.append(notes())
                .append('\n')
                .append(Wrap.hanging("", report.caution()))
                .append(Wrap.hanging("", made()))
                .toString();
    }

    private String head() {
        return Wrap.hanging(
                        "",
                        "Case " + report.subject().id() + ", judged to stage "
                                + report.stages()
                                        .get(report.stages().size() - 1)
                                        .word()
                                + report.subject().date().map(d -> " for " + d).orElse(", no day given") + ".")
                + (report.subject().note().isEmpty()
                        ? ""
                        : Wrap.hanging("", report.subject().note()))
                + Wrap.hanging("", Headline.settle(report).toUpperCase(Locale.ROOT))
                + Wrap.hanging("", Headline.meaning(report));
    }

    private String decides(boolean full) {
        if (warnings.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("\nWHAT DECIDES\n");
        int left = PAGE - lines(head()) - lines(getFirst()) - lines(again()) - lines(errors()) - 3;
        int shown = 0;
        for (Finding f : warnings) {
            String one = full ? FindingText.inFull(f) : FindingText.shortly(f);
            if (!full && lines(one) > left) {
                return out.append("and " + (warnings.size() - shown) + " more, below\n")
                        .toString();
            }
            out.append(full && shown > 0 ? "\n" : "").append(one);
            left -= lines(one);
            shown++;
        }
        return out.toString();
    }

    private String getFirst() {
        List<MissingFact> missing = MissingFact.of(report);
        if (missing.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("\nGET FIRST\n");
        for (MissingFact m : missing.subList(0, Math.min(MISSING, missing.size()))) {
            out.append(Wrap.hanging(
                    "  ",
                    m.words() + " " + m.pointer() + " (" + m.criteria().size()
                            + (m.criteria().size() == 1 ? " criterion" : " criteria") + ")"));
        }
        int more = missing.size() - MISSING;
        return out.append(more <= 0 ? "" : "  and " + more + " more; --all lists them\n")
                .toString();
    }

    private String again() {
        List<RepeatAdvice> worth = Decides.repeats(report);
        if (worth.isEmpty()) {
            return "";
        }
        Certainty sure = report.certainty().orElseThrow();
        StringBuilder out = new StringBuilder("\nMEASURE AGAIN FIRST\n");
        for (RepeatAdvice r : worth) {
            out.append(Wrap.hanging("  ", r.words() + " (" + criteria(r.criteria()) + ")"));
        }
        String number = Numbers.plain(sure.expectedFlips(), 1);
        return out.append(Wrap.hanging(
                        "  ",
                        "If all were measured again, " + number + (number.equals("1.0") ? " result" : " results")
                                + " would change on average."))
                .toString();
    }

    private static String criteria(List<String> ids) {
        return String.join(", ", ids.subList(0, Math.min(CRITERIA, ids.size())))
                + (ids.size() > CRITERIA ? " and " + (ids.size() - CRITERIA) + " more" : "");
    }

    /** What passes, is not assessed and does not apply, in a line or two a stage. */
    private String folded() {
        StringBuilder out = new StringBuilder("\nTHE REST, BY STAGE (--all unfolds it)\n");
        for (Stage s : report.stages()) {
            List<Finding> of =
                    report.findings().all().stream().filter(f -> f.stage() == s).toList();
            List<String> said = new ArrayList<>();
            long pass = of.stream()
                    .filter(f -> f.outcome() == Status.PASS && !f.onTheLimit())
                    .count();
            long off = of.stream()
                    .filter(f -> f.outcome() == Status.DOES_NOT_APPLY)
                    .count();
            List<String> open = of.stream()
                    .filter(f -> f.outcome() == Status.NOT_ASSESSED)
                    .map(Finding::id)
                    .toList();
            said.add(pass == 0 ? "" : pass + " pass" + closest(of));
            said.add(open.isEmpty() ? "" : open.size() + " not assessed: " + String.join(", ", open));
            said.add(off == 0 ? "" : off + (off == 1 ? " does not apply" : " do not apply"));
            said.removeIf(String::isEmpty);
            out.append(Wrap.hanging("  " + s.word() + " ".repeat(12 - s.word().length()), String.join("; ", said)));
        }
        return out.toString();
    }

    private static String closest(List<Finding> of) {
        Optional<Finding> nearest = of.stream()
                .filter(f -> f.outcome() == Status.PASS && !f.onTheLimit() && Chance.worthAWord(f))
                .max(Comparator.comparingDouble((Finding f) -> f.flip().orElse(0)));
        return nearest.map(f -> ", closest to its limit " + f.id() + " ("
                        + Numbers.chance(f.flip().orElse(0)) + ")")
                .orElse("");
    }

    private String stage(Stage stage) {
        StringBuilder out = new StringBuilder("\n" + stage.word().toUpperCase(Locale.ROOT) + "\n");
        for (Finding f : report.findings().forReading()) {
            if (f.stage() == stage) {
                out.append(
                        switch (f.outcome()) {
                            case WARN -> "";
                            case NOT_ASSESSED -> FindingText.open(f);
                            case PASS ->
                                FindingText.line(f.onTheLimit() ? "  on the limit   " : "  pass           ", f);
                            case DOES_NOT_APPLY -> FindingText.line("  does not apply ", f);
                        });
            }
        }
        return out.toString();
    }

    private String errors() {
        StringBuilder out = new StringBuilder();
        for (OwnError error : report.errors()) {
            out.append(out.isEmpty() ? "\nERRORS OF THE PROGRAM (these criteria were not judged)\n" : "")
                    .append(Wrap.hanging("  ", error.toString()));
        }
        return out.toString();
    }

    /** Waivers that do not count, notes on the input, and how chances are meant. */
    private String notes() {
        StringBuilder out = new StringBuilder();
        for (WaiverNote note : report.findings().waiverNotes()) {
            out.append(out.isEmpty() ? "\nWAIVERS THAT DO NOT COUNT HERE\n" : "");
            out.append(Wrap.hanging(
                    "  ",
                    (note.criterion().isEmpty() ? "" : note.criterion() + ": ") + note.text() + " (" + note.pointer()
                            + ")"));
        }
        out.append(report.input().isEmpty() ? "" : "\nNOTES ON THE CASE FILE\n");
        for (InputNote note : report.input()) {
            out.append(Wrap.hanging("  ", note.text()));
        }
        String assumed = AssumedError.sentence(
                Decides.repeats(report).stream().map(RepeatAdvice::pointer).toList());
        return out.append(assumed.isEmpty() ? "" : "\n" + Wrap.hanging("", assumed))
                .toString();
    }

    private String made() {
        Map<String, Double> changed = report.rulebase().changed();
        return "Fairlead " + report.tool() + ", rulebase " + report.rulebase().version() + " "
                + report.rulebase().hash().substring(0, 8)
                + (changed.isEmpty()
                        ? ""
                        : " with " + changed.size() + (changed.size() == 1 ? " threshold" : " thresholds")
                                + " of this site (" + String.join(", ", changed.keySet()) + ")")
                + report.certainty()
                        .flatMap(Certainty::drawn)
                        .map(d -> ", " + d.draws() + " draws of seed " + d.seed())
                        .orElse("")
                + ".";
    }

    private static int lines(CharSequence text) {
        return (int) text.chars().filter(c -> c == '\n').count();
    }
}
