package dev.fairlead.report.sheet;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.report.pdf.PdfWriter;
import dev.fairlead.rules.catalogue.Catalogue;
import java.util.List;

/**
 * The sheet for bench and chair: the wire true to size with a rule to check the print, marks, folds, the force band,
 * and the checklist with boxes and lines. What a case does not say stands as a blank to fill in and is named.
 */
public final class BenchSheet {
    private final Catalogue catalogue;

    /** Sheets whose checklists follow the criteria and limits of a rulebase. */
    public BenchSheet(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** What is missing when nothing at all can be drawn of the wire; empty when a sheet can be made. */
    public List<Missing> refusal(Checked checked) {
        SheetCase c = new SheetCase(checked);
        return c.archKnown() || c.foldsKnown() ? List.of() : c.missing();
    }

    /** The sheet as PDF/A, on pages of this paper. */
    public byte[] pdf(Checked checked, Paper paper) {
        return PdfWriter.pdf(html(checked, paper));
    }

    /** The pages as they go into the PDF. */
    String html(Checked checked, Paper paper) {
        return new SheetHtml(drawable(checked), catalogue, paper).html();
    }

    /** The drawings alone on one page of this paper, its width and height in mm. */
    public String svg(Checked checked, Paper paper) {
        return new SheetSvg(drawable(checked), paper).svg();
    }

    private SheetCase drawable(Checked checked) {
        List<Missing> missing = refusal(checked);
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("nothing can be drawn of this wire; missing: "
                    + missing.stream().map(Missing::words).toList());
        }
        return new SheetCase(checked);
    }
}
