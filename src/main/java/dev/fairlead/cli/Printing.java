package dev.fairlead.cli;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.report.html.FamilySheet;
import dev.fairlead.report.html.LoggedChange;
import dev.fairlead.report.html.ReportHtml;
import dev.fairlead.report.html.ReportPdf;
import dev.fairlead.report.sheet.BenchSheet;
import dev.fairlead.report.sheet.Paper;
import dev.fairlead.web.page.Prints;
import java.util.List;

/** Reports and sheets for the local page. */
final class Printing implements Prints {
    @Override
    public String html(Checked checked, List<LoggedChange> changes) {
        return ReportHtml.of(List.of(checked), List.of(), false, c -> changes);
    }

    @Override
    public byte[] pdf(Checked checked, List<LoggedChange> changes) {
        return ReportPdf.of(List.of(checked), List.of(), false, c -> changes);
    }

    @Override
    public byte[] firstPage(Checked checked) {
        return ReportPdf.onePage(List.of(checked), List.of());
    }

    @Override
    public byte[] sheet(Checked checked, Paper paper) {
        return new BenchSheet(checked.catalogue()).pdf(checked, paper);
    }

    @Override
    public byte[] family(Checked checked, Paper paper) {
        return FamilySheet.pdf(checked.subject().id(), paper);
    }

    @Override
    public List<Missing> noSheet(Checked checked) {
        return new BenchSheet(checked.catalogue()).refusal(checked);
    }
}
