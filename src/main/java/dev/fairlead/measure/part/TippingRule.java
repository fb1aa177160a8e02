package dev.fairlead.measure.part;

import dev.fairlead.measure.Say;
import dev.fairlead.measure.Workbook;
import dev.fairlead.measure.Working;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;

/**
 * Incisors that tip by 2.5 degrees per mm of advancement (Tweed's head-plate correction: 0.8 mm of both sides' space per degree).
 *
 * <p>Published figures run from 2.4 to 3.5 degrees per mm (Mutinelli et al. 2000: 2.8 controlled, 3.5 uncontrolled tipping; 2.4 is a
 * lever of 24 mm). The error of the factor is 0.5 degrees per mm, so that two standard deviations reach the far end.
 */
final class TippingRule implements PositionPart {
    static final double DEGREES_PER_MM = 2.5;
    static final double FACTOR_SD = 0.5;
    private static final String FACTOR = "degrees of tipping per mm of advancement";
    /** Lever that tips by 2.5 degrees per mm: 180 / (pi x 2.5), mm. */
    private static final double LEVER = Math.toDegrees(1) / DEGREES_PER_MM;
    private static final String GROUP = "Position";

    @Override
    public Position after(Readings readings, Workbook book) {
        Case c = readings.ofCase();
        Measured left = c.plan().advanceLeft();
        Measured right = c.plan().advanceRight();
        Measured mean = left.plus(right).times(0.5);
        Measured most = left.max(right);
        Measured before = readings.incisorMandibular();
        Measured tip = mean.chain(known(mean) * DEGREES_PER_MM, DEGREES_PER_MM, Unit.DEGREE).withError(FACTOR, known(mean) * FACTOR_SD);
        Measured after = before.plus(tip);
        Measured compensated = after.plus(readings.mandibularPlane()).plus(-25);
        Measured toAPog = readings.incisorToAPog().plus(mean);
        Measured overjet = c.bite().overjet().minus(most);
        Measured overbite = c.bite().overbite().minus(drop(c, before, mean));
        if (book.wanted()) {
            write(book, c, before, mean, most, readings, new Position(after, compensated, toAPog, overjet, overbite));
        }
        return new Position(after, compensated, toAPog, overjet, overbite);
    }

    private static double known(Measured m) {
        return m.known() ? m.value() : 0;
    }

    /** How far the edge sinks while it goes forward on a circle about the tipping centre, taken square to the mandibular plane, mm. */
    private static Measured drop(Case c, Measured inclination, Measured advance) {
        Measured radius = c.headFilm().tippingRadius().known() ? c.headFilm().tippingRadius() : Measured.exact(LEVER, Unit.MM);
        return Measured.function(Unit.MM, x -> {
            double before = Math.toRadians(x[0]);
            double cos = Math.cos(before) - x[1] / x[2];
            return x[2] * (Math.sin(before) - Math.sin(Math.acos(Math.max(-1, Math.min(1, cos)))));
        }, inclination, advance, radius);
    }

    private static void write(Workbook book, Case c, Measured before, Measured mean, Measured most, Readings readings, Position p) {
        book.add(() -> Working.of("position.inclination-after", GROUP, "lower incisor to mandibular plane after advancement", p.inclination(),
                "before + 2.5 °/mm x mean advancement", Say.num(before) + " + 2.5 x " + Say.num(mean),
                "Published factors run from 2.4 to 3.5 degrees per mm and treated children show far less; the error spans them.",
                "tweed-head-plate", "mutinelli-2000", "yitschaky-2016"));
        book.add(() -> Working.of("position.compensated-after", GROUP, "the same, compensated for the mandibular plane", p.compensated(),
                "(FMA - 25) + inclination after", "(" + Say.num(readings.mandibularPlane()) + " - 25) + " + Say.num(p.inclination()), "", "zatarain-2016"));
        book.add(() -> Working.of("position.to-a-pog-after", GROUP, "incisal edge to A-Pog after advancement", p.toAPog(),
                "before + mean advancement", Say.num(readings.incisorToAPog()) + " + " + Say.num(mean), "", "ricketts"));
        book.add(() -> Working.of("position.overjet-after", GROUP, "overjet after advancement", p.overjet(),
                "overjet - larger advancement of the two sides", Say.num(c.bite().overjet()) + " - " + Say.num(most), "", "geometry"));
        book.add(() -> Working.of("position.overbite-after", GROUP, "overbite after advancement", p.overbite(),
                "overbite - r (sin before - sin after), the edge going forward on a circle of radius r",
                Say.num(c.bite().overbite()) + " - " + Say.num(c.bite().overbite().minus(p.overbite())),
                "Taken square to the mandibular plane; r is 22.9 mm (2.5 degrees per mm) where the film gives none.", "geometry"));
    }
}
