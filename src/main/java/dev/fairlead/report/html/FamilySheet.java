package dev.fairlead.report.html;

import dev.fairlead.drawing.Svg;
import dev.fairlead.report.pdf.PdfWriter;
import dev.fairlead.report.sheet.Paper;

/**
 * One page for the family of a child who wears the wire: what to expect, what to avoid, what to do, and when to get
 * emergency help. Its advice is common practice, no source; it names the case by its pseudonym only.
 */
public final class FamilySheet {
    private final String id;
    private final Paper paper;

    private FamilySheet(String id, Paper paper) {
        this.id = id;
        this.paper = paper;
    }

    /** The page as PDF/A on paper of that size. */
    public static byte[] pdf(String id, Paper paper) {
        return PdfWriter.pdf(html(id, paper));
    }

    static String html(String id, Paper paper) {
        return Templates.render("report/family.jte", new FamilySheet(id, paper));
    }

    /** The pseudonym of the case. */
    public String id() {
        return id;
    }

    /** The page in the words of a style sheet. */
    public String page() {
        return "@page { size: " + Svg.num(paper.width()) + "mm " + Svg.num(paper.height()) + "mm; margin: 11mm 14mm; }";
    }
}
