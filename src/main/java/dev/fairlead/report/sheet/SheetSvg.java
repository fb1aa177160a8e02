package dev.fairlead.report.sheet;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Svg;
import dev.fairlead.drawing.Svg.Anchor;
import dev.fairlead.model.Side;
import dev.fairlead.report.picture.ArchDrawing;
import dev.fairlead.report.picture.FoldDrawing;
import dev.fairlead.report.picture.StripDrawing;
import java.util.ArrayList;
import java.util.List;

/** The drawings of a sheet on one page, true to size. */
final class SheetSvg {
    private static final double MARGIN = 12;
    private static final double GAP = 6;

    private final SheetCase c;
    private final Paper paper;

    SheetSvg(SheetCase c, Paper paper) {
        this.c = c;
        this.paper = paper;
    }

    /** What the page shows, and nothing else. */
    private String words() {
        List<String> shown = new ArrayList<>(List.of("a rule of 100 mm"));
        if (c.archKnown()) {
            shown.add("the arch of the unbent wire from above");
        }
        if (c.marksKnown()) {
            shown.add("the straight blank with the marks of the right side");
        }
        if (c.foldsKnown()) {
            shown.add("both folds from the cheek, enlarged");
        }
        return "True to size unless a scale is given: " + String.join(", ", shown) + ".";
    }

    String svg() {
        Svg svg = new Svg(
                "bench-sheet", "Bench sheet of case " + c.subject.id(), words(), paper.width(), paper.height(), "mm");
        svg.rectangle(Ink.PAPER, Ink.PAPER, 0, 0, 0, paper.width(), paper.height());
        double y = MARGIN + 4;
        svg.bold(Ink.INK, 5, Anchor.start, MARGIN, y, "Bench sheet, case " + c.subject.id());
        y += 6;
        svg.text(
                Ink.SOFT,
                2.8,
                Anchor.start,
                MARGIN,
                y,
                "Print at 100 %. Measure the rule first: it is 100 mm from edge to edge. If it is not, the drawings are not true to size.");
        y += 3;
        RuleDrawing.draw(svg, MARGIN, y);
        y += RuleDrawing.HEIGHT + GAP;
        if (c.archKnown()) {
            ArchDrawing arch = c.arch();
            arch.draw(svg, (paper.width() - arch.width()) / 2, y);
            y += arch.height() + GAP;
        }
        if (c.marksKnown()) {
            StripDrawing strip = c.strip();
            strip.draw(svg, (paper.width() - strip.width()) / 2, y);
            y += strip.height() + GAP;
        }
        if (c.foldsKnown()) {
            double left = (paper.width() - 2 * FoldDrawing.WIDTH) / 2;
            c.fold(Side.RIGHT).draw(svg, left, y);
            c.fold(Side.LEFT).draw(svg, left + FoldDrawing.WIDTH, y);
        }
        svg.text(
                Ink.SOFT,
                2.5,
                Anchor.start,
                MARGIN,
                paper.height() - MARGIN,
                "It supports the judgement of a licensed clinician and does not replace it; local rules come first. Try the wire on the model before the mouth.");
        return svg.done();
    }
}
