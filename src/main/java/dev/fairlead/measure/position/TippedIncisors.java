package dev.fairlead.measure.position;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;

/**
 * Incisors that tip forward about one centre. Where the head film gives the distance from the centre to the edge, by
 * the geometry of that turn; else by 2.5 degrees per mm of advancement (Tweed's head-plate correction: 0.8 mm of both
 * sides' space per degree).
 *
 * <p>Published figures run from 2.4 to 3.5 degrees per mm (Mutinelli et al. 2000: 2.8 controlled, 3.5 uncontrolled
 * tipping; 2.4 is a lever of 24 mm). The error of the factor is 0.5 degrees per mm, so that two standard deviations
 * reach the far end.
 */
public final class TippedIncisors implements IncisorPrediction {
    static final double FACTOR_SD = 0.5;
    private static final String FACTOR = "degrees of tipping per mm of advancement";
    /** Lever that tips by 2.5 degrees per mm: 180 / (pi x 2.5), mm. */
    private static final Measured LEVER = Measured.exact(Math.toDegrees(1) / Tipping.RULE_DEGREES_PER_MM, Unit.MM);

    private static final double UPRIGHT = 90;
    private static final String GROUP = "Incisor position";

    @Override
    public PredictedIncisors after(Readings readings, Workbook book) {
        Case c = readings.ofCase();
        Measured left = c.plan().advanceLeft();
        Measured right = c.plan().advanceRight();
        Measured mean = left.plus(right).times(0.5);
        Measured most = left.max(right);
        Measured before = readings.incisorMandibular();
        Measured radius = c.headFilm().tippingRadius();
        Measured after = after(before, mean, radius);
        Measured compensated = after.plus(readings.mandibularPlane()).plus(-Cephalometry.FMA_NORM);
        Measured toAPog = readings.incisorToAPog().plus(mean);
        Measured overjet = c.bite().overjet().minus(most);
        Measured overbite = c.bite()
                .overbite()
                .minus(Measured.function(
                        Unit.MM, x -> drop(x[0], x[1], x[2]), before, mean, radius.known() ? radius : LEVER));
        PredictedIncisors position = new PredictedIncisors(after, compensated, toAPog, overjet, overbite);
        if (book.wanted()) {
            write(book, c, before, mean, most, readings, position);
        }
        return position;
    }

    private static Measured after(Measured before, Measured mean, Measured radius) {
        Measured after = radius.known()
                ? Measured.function(
                        Unit.DEGREE, x -> x[0] + tip(x[0], x[1], x[2]).inclinationChange(x[1]), before, mean, radius)
                : before.plus(
                        mean.known()
                                ? mean.chain(
                                        Tipping.inclinationChangeByRule(mean.value()),
                                        Tipping.RULE_DEGREES_PER_MM,
                                        Unit.DEGREE)
                                : mean);
        return after.known() ? after.withError(FACTOR, mean.value() * FACTOR_SD) : after;
    }

    private static double drop(double inclination, double advance, double radius) {
        return tip(inclination, advance, radius).edgeDrop(advance);
    }

    /**
     * The turn, with the lean taken from the perpendicular of the mandibular plane; a radius too short for it is taken
     * as just enough.
     */
    private static Tipping tip(double inclination, double advance, double radius) {
        double lean = Math.max(-89, Math.min(89, inclination - UPRIGHT));
        double room = 1 - Math.sin(Math.toRadians(lean));
        return new Tipping(Math.max(radius, advance / room), lean);
    }

    private static void write(
            Workbook book,
            Case c,
            Measured before,
            Measured mean,
            Measured most,
            Readings readings,
            PredictedIncisors p) {
        Measured radius = c.headFilm().tippingRadius();
        String lean = "asin(sin(" + Say.num(before) + " - 90) + " + Say.num(mean) + " / " + Say.num(radius) + ")";
        book.add(() -> radius.known()
                ? Working.of(
                        "position.inclination-after",
                        GROUP,
                        "lower incisor to mandibular plane after advancement",
                        p.inclination(),
                        "90 + asin(sin(before - 90) + mean advancement / R)",
                        "90 + " + lean,
                        "Turned about the centre that the head film gives; by the rule of 2.5 degrees per mm it would be "
                                + Say.num(before.plus(rule(mean)))
                                + ". Published factors run from 2.4 to 3.5 degrees per mm; the error spans them. Treated children show far less.",
                        "geometry",
                        "mutinelli-2000",
                        "yitschaky-2016")
                : Working.of(
                        "position.inclination-after",
                        GROUP,
                        "lower incisor to mandibular plane after advancement",
                        p.inclination(),
                        "before + 2.5 °/mm x mean advancement",
                        Say.num(before) + " + 2.5 x " + Say.num(mean),
                        "By the rule, for the head film gives no centre of tipping; it is a turn about a centre 22.9 mm away."
                                + " Published factors run from 2.4 to 3.5 degrees per mm; the error spans them. Treated children show far less.",
                        "tweed-head-plate",
                        "mutinelli-2000",
                        "yitschaky-2016"));
        book.add(() -> Working.of(
                "position.compensated-after",
                GROUP,
                "the same, compensated for the mandibular plane",
                p.compensated(),
                "(FMA - 25) + inclination after",
                "(" + Say.num(readings.mandibularPlane()) + " - 25) + " + Say.num(p.inclination()),
                "",
                "zatarain-2016"));
        book.add(() -> Working.of(
                "position.to-a-pog-after",
                GROUP,
                "incisal edge to A-Pog after advancement",
                p.toAPog(),
                "before + mean advancement",
                Say.num(readings.incisorToAPog()) + " + " + Say.num(mean),
                "The direction of advancement is taken as square to A-Pog.",
                "ricketts"));
        book.add(() -> Working.of(
                "position.overjet-after",
                GROUP,
                "overjet after advancement",
                p.overjet(),
                "overjet - larger advancement of the two sides",
                Say.num(c.bite().overjet()) + " - " + Say.num(most),
                "The upper incisors stay.",
                "geometry"));
        book.add(() -> Working.of(
                "position.overbite-after",
                GROUP,
                "overbite after advancement",
                p.overbite(),
                "overbite - R (cos(lean before) - cos(lean after))",
                Say.num(c.bite().overbite()) + " - "
                        + Say.signed(c.bite().overbite().minus(p.overbite())),
                "Lean is taken from the perpendicular of the mandibular plane; R is "
                        + (radius.known()
                                ? Say.num(radius) + " mm."
                                : "22.9 mm (2.5 degrees per mm), for the head film gives none."),
                "geometry"));
    }

    private static Measured rule(Measured mean) {
        return mean.known() ? Measured.exact(Tipping.inclinationChangeByRule(mean.value()), Unit.DEGREE) : mean;
    }
}
