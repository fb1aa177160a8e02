package dev.fairlead.report.picture;

import dev.fairlead.check.Checked;
import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.Front;
import dev.fairlead.measure.arch.PositionResult;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Room against need of each side as bars to one scale, with the advancement that is needed and planned beside them. */
public final class SpacePicture {
    private static final String TITLE = "Room and need of each side";
    private static final double WIDTH = 420;
    private static final double LEFT = 8;
    private static final double BAR = 18;
    private static final double SIDE = 96;
    private static final double TOP = 6;

    private final Checked checked;
    private final SpaceResult space;
    private final double scale;

    private SpacePicture(Checked checked) {
        this.checked = checked;
        this.space = checked.worked().space();
        double most = 1;
        for (Side side : Side.values()) {
            most = Math.max(
                    most,
                    Math.max(space.side(side).required().value(), room(side).value()));
        }
        scale = (WIDTH - 2 * LEFT) / (most * 1.02);
    }

    /** The picture; empty while need or room of a side is missing. */
    public static Drawing of(Checked checked) {
        SpaceResult s = checked.worked().space();
        return s.left().shortage().known() && s.right().shortage().known()
                ? Drawing.of(new SpacePicture(checked).picture())
                : Drawing.without(
                        TITLE,
                        s.left().required(),
                        s.left().shortage(),
                        s.right().required(),
                        s.right().shortage());
    }

    private Picture picture() {
        String words = "Bars from zero, to one scale. " + words(Side.RIGHT) + " " + words(Side.LEFT)
                + " The room is the measured buccal segment less half of what the incisors lack.";
        Svg svg = new Svg("space", TITLE, words, WIDTH, TOP + 2 * SIDE);
        side(svg, Side.RIGHT, TOP);
        side(svg, Side.LEFT, TOP + SIDE);
        List<List<String>> rows = List.of(row(Side.RIGHT), row(Side.LEFT));
        return new Picture(
                "space",
                TITLE,
                words,
                svg.done(),
                List.of("Side", "Room", "Need", "Lacks", "Advance needed", "Advance planned"),
                rows);
    }

    private void side(Svg svg, Side side, double y) {
        SideSpace s = space.side(side);
        double need = s.required().value() * scale;
        double room = room(side).value() * scale;
        double less = Math.min(need, room);
        boolean lacks = need > room;
        Ink tone = lacks ? Ink.STOP : Ink.PASS;
        svg.bold(Ink.INK, 14, Svg.Anchor.start, LEFT, y + 14, "patient's " + side.word());
        svg.bold(tone, 14, Svg.Anchor.end, WIDTH - LEFT, y + 14, lacking(s.shortage()));
        svg.rectangle(Ink.WASH, Ink.ACCENT, 1.2, LEFT, y + 22, need, BAR);
        svg.text(Ink.INK, 12, Svg.Anchor.start, LEFT + 6, y + 22 + BAR - 5, "need " + Numbers.text(s.required()));
        svg.rectangle(Ink.PAPER, Ink.SOFT, 1.2, LEFT, y + 24 + BAR, room, BAR);
        svg.text(Ink.INK, 12, Svg.Anchor.start, LEFT + 6, y + 24 + 2 * BAR - 5, "room " + Numbers.text(room(side)));
        double row = lacks ? y + 24 + BAR : y + 22;
        if (Math.abs(need - room) > 0.05) {
            List<Svg.At> gap = List.of(
                    new Svg.At(LEFT + less, row),
                    new Svg.At(LEFT + Math.max(need, room), row),
                    new Svg.At(LEFT + Math.max(need, room), row + BAR),
                    new Svg.At(LEFT + less, row + BAR));
            svg.area(tone, 0.3, gap);
            svg.line(tone, 1.4, 3, List.of(gap.get(0), gap.get(1), gap.get(2), gap.get(3), gap.get(0)));
        }
        need(side)
                .ifPresent(n ->
                        svg.text(Ink.SOFT, 12, Svg.Anchor.start, LEFT, y + 40 + 2 * BAR, "advance: " + advance(n)));
    }

    private Optional<PositionResult.SideNeed> need(Side side) {
        return checked.worked().front().map(Front::position).map(p -> p.side(side));
    }

    private static String advance(PositionResult.SideNeed n) {
        List<String> parts = new ArrayList<>();
        if (n.chord().known()) {
            parts.add("needed " + Numbers.text(n.chord().max(Measured.exact(0, Unit.MM))));
        }
        parts.add("planned " + Numbers.text(n.planned()));
        return String.join(", ", parts);
    }

    /** What canine and premolars find once the incisors stand in line, mm. */
    private Measured room(Side side) {
        return space.side(side).required().minus(space.side(side).shortage());
    }

    static String lacking(Measured shortage) {
        return shortage.value() > 0 ? "lacks " + Numbers.text(shortage) : "spare " + Numbers.text(shortage.times(-1));
    }

    private String words(Side side) {
        SideSpace s = space.side(side);
        return "The " + side.word() + " side has " + Numbers.text(room(side)) + " and needs "
                + Numbers.text(s.required()) + ": it "
                + (s.shortage().value() > 0
                        ? "lacks " + Numbers.text(s.shortage())
                        : "has " + Numbers.text(s.shortage().times(-1)) + " to spare")
                + ".";
    }

    private List<String> row(Side side) {
        SideSpace s = space.side(side);
        Optional<PositionResult.SideNeed> n = need(side);
        return List.of(
                side.word(),
                Numbers.text(room(side)),
                Numbers.text(s.required()),
                Numbers.text(s.shortage()),
                n.map(x -> Numbers.text(x.chord())).orElse("not worked out"),
                Numbers.text(checked.subject().plan().advance(side)));
    }
}
