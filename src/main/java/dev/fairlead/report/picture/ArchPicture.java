package dev.fairlead.report.picture;

import dev.fairlead.check.Checked;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.Front;
import dev.fairlead.measure.arch.ArchResult;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lower arch from above with the teeth that it has to hold: where canine and premolars would run into the molar, or
 * leave room.
 */
public final class ArchPicture {
    private static final String TITLE = "Lower arch and the teeth it has to hold";
    private static final double WIDTH = 420;
    private static final double EDGE = 16;
    private static final double FOOT = 62;

    private final SpaceResult space;
    private final ArchLine line;
    private final double scale;
    private final double middle;
    private final double top;
    private final double height;
    private final List<LaidTeeth> sides;

    private ArchPicture(Checked checked, ArchResult.Drawn drawn) {
        space = checked.worked().space();
        line = new ArchLine(drawn.curve());
        sides = List.of(LaidTeeth.of(checked.subject(), space.left()), LaidTeeth.of(checked.subject(), space.right()));
        double wide = 0;
        double low = 0;
        for (Side side : Side.values()) {
            for (LaidTeeth.Laid t : sides.get(side.ordinal()).teeth()) {
                for (Point p : crown(side, t)) {
                    wide = Math.max(wide, Math.abs(p.x()));
                    low = Math.min(low, p.y());
                }
            }
        }
        scale = (WIDTH - 2 * EDGE) / (2 * wide);
        middle = WIDTH / 2;
        top = EDGE - scale * low;
        height = top + scale * (drawn.curve().depth() + 4) + FOOT;
    }

    /**
     * The picture; empty while widths of the incisors, the need of a side, its room or the form of the arch are
     * missing.
     */
    public static Drawing of(Checked checked) {
        SpaceResult s = checked.worked().space();
        Optional<ArchResult> arch = checked.worked().front().map(Front::arch);
        List<CaseValue> wanted = new ArrayList<>(List.of(
                s.left().required(),
                s.right().required(),
                s.left().shortage(),
                s.right().shortage()));
        Tooth.LOWER_INCISORS.forEach(t -> wanted.add(checked.subject().tooth(t).width()));
        arch.ifPresent(a -> wanted.add(a.perimeter()));
        CaseValue[] all = wanted.toArray(CaseValue[]::new);
        boolean known = wanted.stream().allMatch(CaseValue::known);
        return known && arch.isPresent() && arch.get().drawn().isPresent()
                ? Drawing.of(new ArchPicture(checked, arch.get().drawn().get()).picture())
                : Drawing.without(TITLE, all);
    }

    private Picture picture() {
        String words = words();
        Svg svg = new Svg("arch", TITLE, words, WIDTH, height);
        svg.line(Ink.RULE, 1, 3, List.of(new Svg.At(middle, EDGE), new Svg.At(middle, height - FOOT)));
        svg.line(Ink.ACCENT, 1.6, 5, archLine());
        for (Side side : Side.values()) {
            teeth(svg, side);
        }
        for (Side side : Side.values()) {
            label(svg, side);
        }
        svg.text(Ink.SOFT, 12, Svg.Anchor.middle, middle, height - FOOT + 12, "front");
        svg.text(
                Ink.SOFT,
                12,
                Svg.Anchor.middle,
                middle,
                height - 6,
                "dashed outline: not yet through, or its width unknown");
        return new Picture(
                "arch",
                TITLE,
                words,
                svg.done(),
                List.of("Side", "Room", "Need of canine and premolars", "Lacks"),
                List.of(row(space.right()), row(space.left())));
    }

    private void teeth(Svg svg, Side side) {
        LaidTeeth laid = sides.get(side.ordinal());
        double way = way(side);
        boolean lacks = laid.end() > laid.molar();
        for (LaidTeeth.Laid t : laid.teeth()) {
            List<Svg.At> outline = crown(side, t).stream().map(this::at).toList();
            svg.area(t.tooth().position() > 2 && t.tooth().position() < 6 ? Ink.WASH : Ink.PAPER, 1, outline);
            svg.line(Ink.SOFT, 1.3, t.standing() ? 0 : 3.5, outline);
        }
        if (Math.abs(laid.end() - laid.molar()) > 0.05) {
            List<Svg.At> gap = line.stripe(way * laid.molar(), way * laid.end(), -4.2, 4.2).stream()
                    .map(this::at)
                    .toList();
            svg.area(lacks ? Ink.STOP : Ink.PASS, 0.35, gap);
            svg.line(lacks ? Ink.STOP : Ink.PASS, 1.5, 0, closed(gap));
        }
        for (LaidTeeth.Laid t : laid.teeth()) {
            Svg.At p = at(line.at(way * (t.from() + t.to()) / 2, 0));
            svg.text(Ink.INK, 12, Svg.Anchor.middle, p.x(), p.y() + 4, t.tooth().toString());
        }
    }

    private void label(Svg svg, Side side) {
        double x = side == Side.RIGHT ? EDGE / 2 : WIDTH - EDGE / 2;
        Svg.Anchor anchor = side == Side.RIGHT ? Svg.Anchor.start : Svg.Anchor.end;
        double y = height - FOOT + 18;
        svg.text(Ink.SOFT, 12, anchor, x, y, "patient's " + side.word());
        Measured lack = space.side(side).shortage();
        svg.bold(lack.value() > 0 ? Ink.STOP : Ink.PASS, 14, anchor, x, y + 18, SpacePicture.lacking(lack));
    }

    private String words() {
        return "Seen from above facing the child: the patient's right on the left, the front below. The incisors stand in line; canine and"
                + " premolars follow with the widths that they need. "
                + "On the right the side " + SpacePicture.lacking(space.right().shortage()) + ", on the left it "
                + SpacePicture.lacking(space.left().shortage())
                + ": by so much they would run into the first molar or leave room before it.";
    }

    private static List<String> row(SideSpace s) {
        return List.of(
                s.side().word(), Numbers.text(s.available()), Numbers.text(s.required()), Numbers.text(s.shortage()));
    }

    private List<Svg.At> archLine() {
        List<Svg.At> points = new ArrayList<>();
        double from = -sides.get(Side.RIGHT.ordinal()).molar();
        double to = sides.get(Side.LEFT.ordinal()).molar();
        for (int i = 0; i <= 60; i++) {
            points.add(at(line.at(from + (to - from) * i / 60, 0)));
        }
        return points;
    }

    private List<Point> crown(Side side, LaidTeeth.Laid t) {
        return line.crown(way(side) * t.from(), way(side) * t.to(), t.thick());
    }

    private static double way(Side side) {
        return side == Side.LEFT ? 1 : -1;
    }

    private static List<Svg.At> closed(List<Svg.At> outline) {
        List<Svg.At> all = new ArrayList<>(outline);
        all.add(outline.get(0));
        return all;
    }

    private Svg.At at(Point p) {
        return new Svg.At(middle + scale * p.x(), top + scale * p.y());
    }
}
