package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import java.util.List;
import java.util.function.Function;

/**
 * Reports as one HTML file that needs nothing else: styles and drawings stand in it, and nothing runs. The same reports
 * are the same bytes.
 */
public final class ReportHtml {
    private ReportHtml() {}

    /** The report of a case that was checked with its workings. */
    public static String of(Checked checked) {
        return of(checked, false);
    }

    /** The same; {@code all} also lists what does not apply, and why. */
    public static String of(Checked checked, boolean all) {
        return of(List.of(checked), List.of(), all);
    }

    /** Several cases in one file, behind a list of contents; cases that could not be read are named there. */
    public static String of(List<Checked> cases, List<UnreadCase> refused, boolean all) {
        return of(cases, refused, all, c -> List.of());
    }

    /** The same with the last changes of each case, as its log tells them. */
    public static String of(
            List<Checked> cases, List<UnreadCase> refused, boolean all, Function<Checked, List<LoggedChange>> changes) {
        return Templates.render("report/page.jte", new Page(cases, refused, all, false, false, changes));
    }
}
