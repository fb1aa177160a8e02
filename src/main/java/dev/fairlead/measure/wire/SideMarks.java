package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.archform.ArcRuler;
import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.mechanics.answer.Blank;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.ArchPath;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.measure.working.LatestAnswers;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;

/**
 * Where the marks of one side fall, mm along the wire's own line through slots and tube from the midline mark. A bend's
 * mark is the middle of the bend. With legs as long as the tube the closed fold's stop then lies at the mesial end of
 * the tube while the front lies in the brackets.
 *
 * <p>The first mark comes to lie distal to the tube by half a bend, pi r / 2, and by the way that the wire goes round
 * to the cheek: 2.3 mm for the usual fold, which is what "about 2 mm distal to the tube" says.
 *
 * @param tube mesial end of the tube, along the line through slots and tubes
 * @param firstBend middle of the first bend, the distal one
 * @param offset how far that mark lies distal to the distal end of the tube when the wire is laid along the arch
 * @param secondBend middle of the second bend, which becomes the stop
 * @param stop end of the second bend, where the tail enters the tube
 * @param cut where the wire is cut, flush with the distal end of the tube
 * @param end end of the blank, with a tail to hold while bending
 * @param foldWire wire that the fold takes up: two half circles and two legs
 */
public record SideMarks(
        Side side,
        Measured tube,
        Measured firstBend,
        Measured offset,
        Measured secondBend,
        Measured stop,
        Measured cut,
        Measured end,
        Measured foldWire) {
    /** Wire left distal of each tube until it is cut, mm; common practice. */
    public static final double TAIL = 2;
    /** Buccal tip that marks and blank allow for, degrees: the tip of the beam model's usual fold. */
    public static final double TIP = 20;
    /**
     * Distance of a lateral incisor's bracket from the midline that marks and blank allow for, mm; it hardly matters.
     */
    private static final double LATERAL = 8.3;

    private static final double QUARTER_TURN = Math.PI / 2;
    /** Both sides ask for the same; so do a case and its variants that differ in something else. */
    private static final int REMEMBERED = 256;

    private static final LatestAnswers<Around, Blank> BLANKS = new LatestAnswers<>(REMEMBERED, Around::blank);

    /** A wire that goes round an arch to one fold on either side. */
    private record Around(ArchCurve curve, FoldSpec fold, double lateral) {
        Blank blank() {
            return Blank.of(new ArchGeometry(new ArchPath(curve), fold.leg(), lateral / 2, lateral), fold, fold, TAIL);
        }

        // written out: what Java makes of a record at the first call takes a start longer than all the geometry that is
        // looked up by it
        @Override
        public boolean equals(Object o) {
            return o instanceof Around a
                    && curve.equals(a.curve)
                    && fold.equals(a.fold)
                    && Double.compare(lateral, a.lateral) == 0;
        }

        @Override
        public int hashCode() {
            return 31 * (31 * curve.hashCode() + fold.hashCode()) + Double.hashCode(lateral);
        }
    }

    static SideMarks of(Case c, WireLine line, Side side) {
        PatientArch arch = line.arch();
        Measured tubeLength = c.hardware().tube(side).length();
        Measured r = FoldShape.plannedRadius(c);
        Measured onTeeth = Measured.function(Unit.MM, x -> half(arch.curve(x).ruler(), side), arch.inputs());
        Measured tube = onTeeth.plus(line.longer(side));
        Measured run = tube.known() && tubeLength.known() && r.known()
                ? tube.plus(detour(arch, side, onTeeth.value(), tubeLength.value(), r.value()))
                : tube.plus(tubeLength).plus(r);
        Measured quarter = r.times(QUARTER_TURN);
        Measured first = run.plus(tubeLength).plus(quarter);
        Measured second = first.plus(quarter).plus(tubeLength).plus(quarter);
        Measured stop = second.plus(quarter);
        Measured cut = stop.plus(tubeLength);
        return new SideMarks(
                side,
                tube,
                first,
                first.minus(tube).minus(tubeLength),
                second,
                stop,
                cut,
                cut.plus(TAIL),
                r.times(2 * Math.PI).plus(tubeLength.times(2)));
    }

    private static double half(ArcRuler ruler, Side side) {
        return side == Side.LEFT ? ruler.end() : -ruler.start();
    }

    /** Extra way from the lateral incisor round to the fold, which stands off towards the cheek, mm. */
    private static double detour(PatientArch arch, Side side, double half, double leg, double r) {
        FoldSpec fold = new FoldSpec(r, leg, leg, 0, TIP);
        Blank blank = BLANKS.of(new Around(arch.curve(), fold, Math.min(LATERAL, half / 2)));
        return (side == Side.LEFT ? blank.runLeft() : blank.runRight()) - half;
    }
}
