package dev.fairlead.report.html;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.PlaceFinding;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.SeenValue;
import dev.fairlead.findings.Weight;
import dev.fairlead.measure.working.Working;
import dev.fairlead.report.summary.Chance;
import dev.fairlead.report.summary.InShort;
import dev.fairlead.rules.catalogue.Status;
import java.util.ArrayList;
import java.util.List;

/** One finding as the templates see it. */
public record FindingView(Finding finding, String anchor, Report report, Cited cited) {
    /** More facts than this are counted, not named. */
    private static final int NAMED = 12;

    private static final int LINE = 4;
    /** A pass that takes more characters than this is shortened: some two lines. */
    private static final int LONG = 180;

    /** A value of the finding beside its limit. */
    public record Row(String place, String value, String limit, String margin, boolean close) {}

    /** The outcome as style sheets and symbols name it. */
    public String mark() {
        return mark(finding);
    }

    static String mark(Finding f) {
        return f.onTheLimit()
                ? "caution"
                : f.outcome() == Status.WARN
                        ? f.weight().word()
                        : f.outcome().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** The outcome as it reads. */
    public String word() {
        return word(finding);
    }

    static String word(Finding f) {
        return switch (f.outcome()) {
            case WARN -> f.weight() == Weight.STOP ? "Stop" : "Caution";
            case NOT_ASSESSED -> "Not assessed";
            case PASS -> f.onTheLimit() ? "On the limit" : "Pass";
            case DOES_NOT_APPLY -> "Does not apply";
        };
    }

    /** Every value that was held against a limit. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (PlaceFinding p : finding.places()) {
            for (SeenValue v : p.values()) {
                rows.add(new Row(p.words(), v.text(), v.limitText(), InShort.margin(v), v.close()));
            }
        }
        return rows;
    }

    /** The rows name places, so there is a column for them. */
    public boolean placed() {
        return rows().stream().anyMatch(r -> !r.place().isEmpty());
    }

    /** How sure the outcome is; empty when that was not worked out, or nothing could turn it. */
    public String chance() {
        double flip = finding.flip().orElse(0);
        if (flip == 0) {
            return finding.flip().isPresent() && finding.close()
                    ? "Errors of measurement alone do not turn it; the error of an equation or a model reaches across the limit."
                    : "";
        }
        return "It " + Chance.of(finding) + ", within the errors of measurement.";
    }

    /** The worked numbers that it holds against its limits. */
    public List<Working> workings() {
        return report.workingsOf(finding);
    }

    /** The measurements that it rests on, in words; those that are missing stand elsewhere. */
    public String rests() {
        List<String> words = finding.usedFields().stream()
                .filter(p ->
                        finding.missing().stream().noneMatch(m -> m.pointer().equals(p)))
                .map(Missing::of)
                .map(Missing::words)
                .distinct()
                .toList();
        return words.size() <= NAMED
                ? String.join("; ", words)
                : String.join("; ", words.subList(0, NAMED)) + "; and " + (words.size() - NAMED) + " more";
    }

    public List<Cited.Note> sources() {
        return cited.notes(finding.sources());
    }

    /** What is missing, in one line. */
    public String missing() {
        List<String> words = finding.missing().stream().map(Missing::words).toList();
        return words.size() <= LINE
                ? String.join("; ", words)
                : String.join("; ", words.subList(0, LINE)) + "; and " + (words.size() - LINE) + " more";
    }

    /** What is seen, in a line: where many places say it at length, how many they are. */
    public String shortly() {
        long passed = finding.places().stream()
                .filter(p -> p.outcome() == finding.outcome())
                .count();
        return finding.warns() || finding.seen().length() <= LONG || passed < 3
                ? finding.seen()
                : passed + " places, each as asked for.";
    }

    /** The line above does not tell all that is seen. */
    public boolean seenApart() {
        return finding.outcome() != Status.WARN
                && !finding.failed()
                && !finding.seen().isEmpty()
                && (finding.outcome() == Status.NOT_ASSESSED
                                && finding.places().stream().anyMatch(p -> p.outcome() != Status.NOT_ASSESSED)
                        || !finding.seen().equals(shortly()));
    }

    /** Who answers for it, and until when. */
    public String waiver() {
        return finding.waiver()
                .map(w -> w.reason() + " (" + w.by().word() + ", " + w.date() + ", holds until " + w.expires() + ")")
                .orElse("");
    }
}
