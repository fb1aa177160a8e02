package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.report.html.LoggedChange;
import dev.fairlead.report.sheet.Paper;
import java.util.List;

/** How reports and sheets of a checked case are made. */
public interface Prints {
    /** The whole report as one HTML file that needs nothing else. */
    String html(Checked checked, List<LoggedChange> changes);

    /** The same as PDF. */
    byte[] pdf(Checked checked, List<LoggedChange> changes);

    /** One page of it to present the case with, as PDF. */
    byte[] firstPage(Checked checked);

    /** The bench sheet at 1:1 as PDF, on pages of that paper. */
    byte[] sheet(Checked checked, Paper paper);

    /** One page for the family of the child of that case, as PDF on that paper. */
    byte[] family(Checked checked, Paper paper);

    /** What is missing when nothing of the wire can be drawn, so that there is no sheet; empty when there is one. */
    List<Missing> noSheet(Checked checked);
}
