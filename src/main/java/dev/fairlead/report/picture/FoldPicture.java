package dev.fairlead.report.picture;

import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Both folds enlarged, closed and opened for the wanted stand-off. */
public final class FoldPicture {
    private FoldPicture() {}

    /** Scales with the page; empty when radius or length of the planned folds is not known. */
    public static Optional<Picture> of(Case c) {
        WireGeometry g = WireGeometry.of(c);
        if (!FoldDrawing.possible(g.plannedRight()) || !FoldDrawing.possible(g.plannedLeft())) {
            return Optional.empty();
        }
        String title = "Folds, closed and opened";
        String description =
                "Both folds seen from the cheek: closed as bent (full line) and opened for the wanted stand-off (broken line), the tail in the"
                        + " molar tube, with fold length, height, beak and the gap to open, in mm.";
        Svg svg = new Svg("folds", title, description, FoldDrawing.WIDTH, 2 * FoldDrawing.HEIGHT);
        FoldDrawing.of(c, g.plannedRight()).draw(svg, 0, 0);
        FoldDrawing.of(c, g.plannedLeft()).draw(svg, 0, FoldDrawing.HEIGHT);
        return Optional.of(new Picture(
                "folds",
                title,
                description,
                svg.done(),
                List.of("Size", "right", "left"),
                List.of(
                        row("fold length", g, FoldOpening::leg),
                        row("height when closed", g, FoldOpening::height),
                        row("radius of the bends at the wire's middle", g, FoldOpening::radius),
                        row("stand-off wanted", g, FoldOpening::standOff),
                        row("gap to open", g, FoldOpening::gap),
                        row("each bend opens by", g, FoldOpening::angle),
                        row("front sinks unless levelled", g, FoldOpening::drop))));
    }

    private static List<String> row(String what, WireGeometry g, Function<FoldOpening, Measured> of) {
        return List.of(what, Numbers.text(of.apply(g.plannedRight())), Numbers.text(of.apply(g.plannedLeft())));
    }
}
