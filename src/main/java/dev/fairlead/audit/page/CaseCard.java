package dev.fairlead.audit.page;

import dev.fairlead.audit.source.TableException;
import dev.fairlead.audit.summary.Look;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.WaiverNote;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.rules.catalogue.Status;
import java.util.List;

/**
 * A case on the page: how it stands, and what was found that does not pass.
 *
 * @param findings warnings and what is not assessed, in the order of reading
 * @param passes names of the criteria that pass
 */
public record CaseCard(Look look, List<Finding> findings, List<String> passes, List<WaiverNote> notes) {
    /** Checks the case once more, with words. */
    static CaseCard of(Look look, Checker checker, CheckOptions options) {
        try {
            CaseReading reading = look.item().read(false).reading();
            List<Finding> all = checker.check(
                            reading.value().orElseThrow(), look.row().hash(), options)
                    .report()
                    .findings()
                    .forReading();
            List<WaiverNote> notes = look.row().notes().isEmpty()
                    ? List.of()
                    : checker.check(reading.value().orElseThrow(), look.row().hash(), options)
                            .report()
                            .findings()
                            .waiverNotes();
            return new CaseCard(
                    look,
                    all.stream()
                            .filter(f -> f.outcome() == Status.WARN || f.outcome() == Status.NOT_ASSESSED)
                            .toList(),
                    all.stream()
                            .filter(f -> f.outcome() == Status.PASS)
                            .map(Finding::id)
                            .toList(),
                    notes);
        } catch (TableException e) {
            throw new IllegalStateException("it was read once", e);
        }
    }

    /** The heaviest that is open, as a class of the look. */
    public String mark() {
        return look.stops() > 0 ? "stop" : look.cautions() > 0 ? "caution" : look.open() > 0 ? "not-assessed" : "pass";
    }

    public String word() {
        return look.stops() > 0 ? "Stop" : look.cautions() > 0 ? "Caution" : look.open() > 0 ? "Waiting" : "Clear";
    }

    /** What does not pass, for the filter of the page. */
    public String criteria() {
        return String.join(" ", findings.stream().map(Finding::id).toList());
    }

    /** Titles of what warns and is not waived, heaviest first: what a printed list has to tell. */
    public String wrong() {
        return String.join(
                "; ",
                findings.stream()
                        .filter(f -> f.warns() && f.waiver().isEmpty())
                        .map(Finding::title)
                        .toList());
    }

    /** The class of a finding. */
    public static String mark(Finding f) {
        return f.outcome() == Status.WARN ? f.weight().word() : f.outcome().word();
    }

    /** The word of a finding. */
    public static String word(Finding f) {
        return f.outcome() == Status.NOT_ASSESSED
                ? "Not assessed"
                : f.weight().word().equals("stop") ? "Stop" : "Caution";
    }
}
