package dev.fairlead.cli;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.report.html.ReportHtml;
import dev.fairlead.report.html.ReportPdf;
import dev.fairlead.report.sheet.BenchSheet;
import dev.fairlead.report.sheet.Paper;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.web.PageError;
import dev.fairlead.web.Prints;
import java.util.List;
import java.util.stream.Collectors;

/** What the local page gives away to keep or to print: the same bytes as the command line writes. */
final class Printing implements Prints {
    private static final int CONFLICT = 409;

    private final BenchSheet sheets;

    Printing(Catalogue catalogue) {
        sheets = new BenchSheet(catalogue);
    }

    @Override
    public String html(Checked checked) {
        return ReportHtml.of(checked);
    }

    @Override
    public byte[] pdf(Checked checked) {
        return ReportPdf.of(checked);
    }

    @Override
    public byte[] sheet(Checked checked) {
        List<Missing> missing = sheets.refusal(checked);
        if (!missing.isEmpty()) {
            throw new PageError(CONFLICT, "Nothing of this wire can be drawn yet, so there is no sheet",
                    "Fill in first: " + missing.stream().map(Missing::words).collect(Collectors.joining("; ")) + ".");
        }
        return sheets.pdf(checked, Paper.A4);
    }
}
