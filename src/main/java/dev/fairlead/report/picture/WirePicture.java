package dev.fairlead.report.picture;

import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The wire laid along the child's arch with its marks. */
public final class WirePicture {
    private WirePicture() {}

    /**
     * Scales with the page; empty when the arch is not known. Marks that are not known are left out of the drawing and
     * stand as unknown beside it.
     */
    public static Optional<Picture> of(Case c) {
        WireGeometry g = WireGeometry.of(c);
        if (!g.arch().known()) {
            return Optional.empty();
        }
        ArchDrawing arch = new ArchDrawing(c, g);
        String title = "Wire along the arch";
        String description =
                "The unbent wire laid along the arch, seen from above facing the child: the patient's right on the left, the front below."
                        + " Midline, brackets, molar tubes and the ends of the blank; on the right the marks for both bends and the cut, in mm along the wire from the midline. The left is marked with the right one seated.";
        Svg svg = new Svg("wire", title, description, arch.width(), arch.height());
        arch.draw(svg, 0, 0);
        return Optional.of(new Picture(
                "wire",
                title,
                description,
                svg.done(),
                List.of("Mark", "right", "left"),
                List.of(
                        row("mesial end of the tube", g, SideMarks::tube),
                        row("first bend", g, SideMarks::firstBend),
                        row("second bend", g, SideMarks::secondBend),
                        row("cut", g, SideMarks::cut),
                        row("end of the blank", g, SideMarks::end))));
    }

    private static List<String> row(String what, WireGeometry g, Function<SideMarks, Measured> of) {
        return List.of(what, Numbers.text(of.apply(g.right())), Numbers.text(of.apply(g.left())));
    }
}
