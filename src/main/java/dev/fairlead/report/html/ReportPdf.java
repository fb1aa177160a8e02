package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import dev.fairlead.report.pdf.PdfWriter;
import java.util.List;
import java.util.function.Function;

/** The same reports as {@link ReportHtml} as PDF/A, for printing and for the record. */
public final class ReportPdf {
    private ReportPdf() {}

    /**
     * Cases that were checked with their workings, several behind a list of contents, each with its last changes as its
     * log tells them; {@code all} also lists what does not apply, and why.
     */
    public static byte[] of(
            List<Checked> cases, List<UnreadCase> refused, boolean all, Function<Checked, List<LoggedChange>> changes) {
        return PdfWriter.pdf(Templates.render("report/paper.jte", new Page(cases, refused, all, true, false, changes)));
    }

    /** One page of each case to present it with: the child, space and plan, key numbers, what decides. */
    public static byte[] onePage(List<Checked> cases, List<UnreadCase> refused) {
        return PdfWriter.pdf(
                Templates.render("report/paper.jte", new Page(cases, refused, false, true, true, c -> List.of())));
    }

    /** What is laid out: XHTML with a style sheet for paper. */
    static String pages(List<Checked> cases, List<UnreadCase> refused, boolean all) {
        return Templates.render("report/paper.jte", new Page(cases, refused, all, true, false, c -> List.of()));
    }
}
