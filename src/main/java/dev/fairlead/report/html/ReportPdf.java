package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import dev.fairlead.report.pdf.PdfWriter;
import java.util.List;
import java.util.function.Function;

/** The same reports as {@link ReportHtml} as PDF/A, for printing and for the record. */
public final class ReportPdf {
    private ReportPdf() {}

    /** The report of a case that was checked with its workings. */
    public static byte[] of(Checked checked) {
        return of(checked, false);
    }

    /** The same; {@code all} also lists what does not apply, and why. */
    public static byte[] of(Checked checked, boolean all) {
        return of(List.of(checked), List.of(), all);
    }

    /** Several cases in one file, behind a list of contents. */
    public static byte[] of(List<Checked> cases, List<UnreadCase> refused, boolean all) {
        return of(cases, refused, all, c -> List.of());
    }

    /** The same with the last changes of each case, as its log tells them. */
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
