package dev.fairlead.measure.position;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.HeadFilm;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.RecordShape;
import java.util.Objects;

/**
 * Incisors that tip forward about one centre. Where the cephalogram gives the distance from the centre to the edge, by
 * the geometry of that turn; else by 2.9 degrees per mm of advancement, with the published spread of 2.5 to 3.6. The
 * turn is reckoned from the perpendicular of the occlusal plane, along which the edge is advanced.
 *
 * <p>What was not measured never makes the outcome milder: beside each value stands the one by the steepest figures,
 * 3.6 degrees per mm and an occlusal plane three standard deviations steeper than its mean.
 */
public final class TippedIncisors implements IncisorPrediction {
    private static final String FACTOR = "degrees of tipping per mm of advancement";
    /**
     * Occlusal to mandibular plane where it was not measured, degrees: between 13.1 (Downs 1948) and 18 (Steiner 1953),
     * and 0.7 for each degree of FMA off its norm; a proposal, no published norm was found.
     */
    static final double PLANES = 16;

    static final double PLANES_SD = 5;
    private static final double PLANES_PER_FMA = 0.7;
    private static final double STEEPEST = 3;
    private static final String PLANES_SPREAD = "occlusal to mandibular plane, spread between children";

    private static final Measured NO_ADVANCE = Measured.exact(0, Unit.MM);

    private static final double UPRIGHT = 90;
    private static final String GROUP = "Incisor position";

    private final Clinic clinic;

    /** Scaled by what a clinic's own cases have shown; as published by {@link Clinic#PUBLISHED}. */
    public TippedIncisors(Clinic clinic) {
        this.clinic = clinic;
    }

    /** Degrees per mm as the lever that turns so far at the start, mm. */
    private static Measured lever(double degreesPerMm) {
        return Measured.exact(Math.toDegrees(1) / degreesPerMm, Unit.MM);
    }

    @Override
    public PredictedIncisors after(Readings readings, Workbook book) {
        Case c = readings.ofCase();
        Measured left = c.plan().advanceLeft();
        Measured right = c.plan().advanceRight();
        Measured mean = left.plus(right).times(0.5);
        Measured most = left.max(right);
        Measured before = readings.incisorMandibular();
        Measured radius = c.headFilm().tippingRadius();
        Measured planes = planes(readings.occlusalMandibular(), readings.mandibularPlane(), 0);
        Measured steep = planes(readings.occlusalMandibular(), readings.mandibularPlane(), STEEPEST);
        double ratio = clinic.tipping().mean();
        Measured inclination = after(before, mean, radius, planes, Tipping.DEGREES_PER_MM, ratio);
        // own cases that tip less never make the steepest figures milder
        Measured inclinationMost = after(before, mean, radius, steep, Tipping.MOST_DEGREES_PER_MM, Math.max(1, ratio));
        Measured divergence = readings.mandibularPlane().plus(-Cephalometry.FMA_NORM);
        PredictedIncisors position = new PredictedIncisors(
                inclination,
                inclination.plus(divergence),
                inclinationMost,
                inclinationMost.plus(divergence),
                readings.incisorToAPog().plus(mean),
                c.bite().overjet().minus(most),
                overbite(c, before, mean, planes, radius.known() ? radius : lever(Tipping.DEGREES_PER_MM)),
                overbite(c, before, mean, steep, radius.known() ? radius : lever(Tipping.MOST_DEGREES_PER_MM)),
                mildest(readings));
        if (book.wanted()) {
            write(book, c, mean, most, readings, planes, position);
        }
        return position;
    }

    private PredictedIncisors.Mildest mildest(Readings readings) {
        Case c = readings.ofCase();
        Measured left = orLeast(c.plan().advanceLeft(), NO_ADVANCE);
        Measured right = orLeast(c.plan().advanceRight(), NO_ADVANCE);
        Measured mean = left.plus(right).times(0.5);
        Measured radius = c.headFilm().tippingRadius();
        Measured before = readings.incisorMandibular();
        Measured fma = readings.mandibularPlane();
        Measured planes = planes(readings.occlusalMandibular(), fma, 0);
        Measured inclination = after(
                before,
                mean,
                radius,
                planes,
                Tipping.DEGREES_PER_MM,
                clinic.tipping().mean());
        return new PredictedIncisors.Mildest(
                inclination,
                inclination.plus(fma.plus(-Cephalometry.FMA_NORM)),
                readings.incisorToAPog().plus(mean),
                c.bite().overjet().minus(left.max(right)),
                overbite(
                        c,
                        orLeast(before, lowest("incisorMandibular")),
                        mean,
                        planes(readings.occlusalMandibular(), orLeast(fma, lowest("mandibularPlane")), 0),
                        radius.known() ? radius : lever(Tipping.DEGREES_PER_MM)));
    }

    private static Measured orLeast(Measured read, Measured least) {
        return read.known() || !read.applies() ? read : least;
    }

    /** The smallest angle of the head film that can be true. */
    private static Measured lowest(String field) {
        return Measured.exact(
                Objects.requireNonNull(RecordShape.of(HeadFilm.class).field(field))
                        .about()
                        .low(),
                Unit.DEGREE);
    }

    /** Occlusal to mandibular plane, degrees: as measured, else its mean and so many standard deviations. */
    private static Measured planes(Measured measured, Measured fma, double deviations) {
        if (measured.known()) {
            return measured;
        }
        Measured mean = fma.plus(-Cephalometry.FMA_NORM).times(PLANES_PER_FMA).plus(PLANES + deviations * PLANES_SD);
        return fma.known() ? mean.withError(PLANES_SPREAD, PLANES_SD) : measured.plus(fma);
    }

    private Measured after(
            Measured before, Measured mean, Measured radius, Measured planes, double factor, double ratio) {
        Measured after = radius.known() && planes.known()
                ? Measured.function(
                        Unit.DEGREE,
                        x -> x[0] + ratio * tip(x[0], x[3], x[1], x[2]).inclinationChange(x[1]),
                        before,
                        mean,
                        radius,
                        planes)
                : before.plus(
                        mean.known() ? mean.chain(ratio * factor * mean.value(), ratio * factor, Unit.DEGREE) : mean);
        return after.known()
                ? after.withError(
                        FACTOR,
                        mean.value() * Tipping.DEGREES_PER_MM * clinic.tipping().sd())
                : after;
    }

    private static Measured overbite(Case c, Measured before, Measured mean, Measured planes, Measured radius) {
        return c.bite()
                .overbite()
                .minus(Measured.function(
                        Unit.MM, x -> tip(x[0], x[3], x[1], x[2]).edgeDrop(x[1]), before, mean, radius, planes));
    }

    /**
     * The turn, with the lean taken from the perpendicular of the occlusal plane; a radius too short for it is taken as
     * just enough.
     */
    private static Tipping tip(double inclination, double planes, double advance, double radius) {
        double lean = Math.max(-89, Math.min(89, inclination - UPRIGHT + planes));
        double room = 1 - Math.sin(Math.toRadians(lean));
        return new Tipping(Math.max(radius, advance / room), lean);
    }

    private void write(
            Workbook book,
            Case c,
            Measured mean,
            Measured most,
            Readings readings,
            Measured planes,
            PredictedIncisors p) {
        Measured before = readings.incisorMandibular();
        Measured radius = c.headFilm().tippingRadius();
        String lean = "asin(sin(lean) + " + Say.num(mean) + " / " + Say.num(radius) + ")";
        String plane = readings.occlusalMandibular().known()
                ? "The lean is taken from the perpendicular of the occlusal plane, " + Say.num(planes)
                        + " degrees to the mandibular plane."
                : "The lean is taken from the perpendicular of the occlusal plane; its angle to the mandibular plane was not"
                        + " measured and is taken as 16 + 0.7 (FMA - 25) = " + Say.num(planes)
                        + " degrees, with a spread of 5.";
        String factor = " Published pairs in growing children run from 2.5 to 3.6 degrees per mm; the error spans them."
                + " By the steepest figures for what was not measured it would be " + Say.num(p.inclinationMost())
                + "."
                + (clinic.own()
                        ? " The change is multiplied by "
                                + Say.num(clinic.tipping().mean()) + ", with a spread of "
                                + Say.num(clinic.tipping().sd()) + ", as " + clinic.cases()
                                + " cases of this clinic have shown."
                        : "");
        book.add(() -> radius.known()
                ? Working.of(
                        "position.inclination-after",
                        GROUP,
                        "lower incisor to mandibular plane after advancement",
                        p.inclination(),
                        "before + asin(sin(lean) + mean advancement / R) - lean",
                        Say.num(before) + " + " + lean + " - lean",
                        "Turned about the centre that the cephalogram gives. " + plane + factor,
                        "geometry",
                        "tipping-in-children",
                        "yitschaky-2016")
                : Working.of(
                        "position.inclination-after",
                        GROUP,
                        "lower incisor to mandibular plane after advancement",
                        p.inclination(),
                        "before + 2.9 °/mm x mean advancement",
                        Say.num(before) + " + 2.9 x " + Say.num(mean),
                        "The cephalogram gives no centre of tipping; 2.9 degrees per mm is a turn about a centre 19.8 mm away."
                                + factor,
                        "tipping-in-children",
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
                plane + " R is "
                        + (radius.known()
                                ? Say.num(radius) + " mm."
                                : "19.8 mm (2.9 degrees per mm), for the cephalogram gives none.")
                        + " By the steepest figures for what was not measured " + Say.num(p.overbiteLeast())
                        + " is left.",
                "geometry",
                "occlusal-plane"));
    }
}
