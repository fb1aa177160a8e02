package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.ArchDimensions;
import dev.fairlead.measure.archform.ArchFamily;
import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.ArchForm;
import dev.fairlead.measure.archform.ArchPlaces;
import dev.fairlead.measure.archform.ArchShape;
import dev.fairlead.measure.archform.Goodness;
import dev.fairlead.measure.archform.Landmarks;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.archform.Reshaping;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Works out the form of one child's arch with everything that people want to see of it. */
public final class ArchAnalysis {
    private static final int CANINE = 3;

    private ArchAnalysis() {}

    public static ArchResult of(Readings readings, SpaceResult space, PatientArch arch) {
        if (!arch.known()) {
            Measured absent = arch.width().plus(arch.depth());
            return new ArchResult(
                    arch.basis(),
                    arch.remark(),
                    arch.width(),
                    arch.depth(),
                    absent,
                    formIndex(readings.ofCase(), arch),
                    Optional.empty());
        }
        Measured perimeter = Measured.function(Unit.MM, x -> arch.curve(x).perimeter(), arch.inputs());
        return new ArchResult(
                arch.basis(),
                arch.remark(),
                arch.width(),
                arch.depth(),
                perimeter,
                formIndex(readings.ofCase(), arch),
                Optional.of(drawn(readings, space, arch)));
    }

    private static ArchResult.Drawn drawn(Readings readings, SpaceResult space, PatientArch arch) {
        ArchCurve curve = arch.curve();
        ArchPlaces places =
                arch.landmarks().map(l -> ArchPlaces.of(curve, l)).orElseGet(() -> ArchPlaces.average(curve));
        ArchShape shape = ArchShape.of(curve, canineArc(curve, places), ArchForm.CutOffs.OWN_CONVENTION);
        List<ArchResult.Segment> sides = Arrays.stream(Side.values())
                .map(s -> segment(readings, space.side(s), curve))
                .toList();
        FormMisfit misfit = FormMisfit.of(readings.ofCase(), arch);
        Optional<ArchResult.Wire> wire = misfit.laid()
                .map(l -> new ArchResult.Wire(
                        l.wire(),
                        misfit.rms(),
                        misfit.worst(),
                        l.laying().onTeeth(curve, l.wire(), places),
                        Reshaping.full(curve, l.wire(), places)));
        return new ArchResult.Drawn(
                fits(readings.ofCase(), arch),
                curve,
                arch.formKnown(),
                withIndex(shape, readings.ofCase(), arch),
                places,
                sides,
                wire);
    }

    private static double canineArc(ArchCurve curve, ArchPlaces places) {
        return places.position(CANINE)
                .orElseGet(() -> ArchPlaces.average(curve).position(CANINE).orElseThrow());
    }

    /** Where canine points were measured, the class goes by them and not by where average canines would stand. */
    private static ArchShape withIndex(ArchShape shape, Case c, PatientArch arch) {
        Measured index = formIndex(c, arch);
        return !index.known()
                ? shape
                : new ArchShape(
                        ArchForm.of(index.value(), ArchForm.CutOffs.OWN_CONVENTION),
                        index.value(),
                        shape.width(),
                        shape.depth(),
                        shape.perimeter());
    }

    private static Measured formIndex(Case c, PatientArch arch) {
        if (arch.basis() == Basis.LANDMARKS) {
            double canine = canineArc(
                    arch.curve(), ArchPlaces.of(arch.curve(), arch.landmarks().orElseThrow()));
            return Measured.function(
                    Unit.RATIO, x -> ArchDimensions.of(arch.curve(x), canine).formIndex(), arch.inputs());
        }
        dev.fairlead.model.ArchMeasures a = c.arch();
        return Measured.function(
                Unit.RATIO,
                x -> x[3] / x[1] / (x[2] / x[0]),
                a.molarWidth(),
                a.molarDepth(),
                a.canineWidth(),
                a.canineDepth());
    }

    /** The lateral stands as far from the midline, along the arch, as the incisors of its side are wide. */
    private static ArchResult.Segment segment(Readings readings, SideSpace space, ArchCurve curve) {
        boolean left = space.side() == Side.LEFT;
        Measured half = Laterals.distal(readings, space.side());
        Optional<Point> lateral = half.known() && half.value() < curve.ruler().end()
                ? Optional.of(curve.atArcLength(left ? half.value() : -half.value()))
                : Optional.empty();
        return new ArchResult.Segment(
                space.side(), lateral, curve.at(left ? 1 : -1), space.available(), space.required(), space.shortage());
    }

    private static List<ArchFit> fits(Case c, PatientArch arch) {
        if (arch.landmarks().isPresent()) {
            return ArchFit.all(arch.landmarks().get());
        }
        double w = arch.width().value();
        double d = arch.depth().value();
        dev.fairlead.model.ArchMeasures a = c.arch();
        boolean canines = arch.formKnown()
                && a.canineWidth().value() < w
                && a.canineDepth().value() < d;
        Landmarks points =
                canines ? corners(w, d, a.canineWidth().value(), a.canineDepth().value()) : corners(w, d);
        List<ArchFit> fits = new ArrayList<>();
        for (ArchFamily family : ArchFamily.values()) {
            if (family.parameters() == 2 && family != ArchFamily.SPLINE) {
                fits.add(fit(family, family.of(w, d), points));
            } else if (canines) {
                through(
                                family,
                                new ArchDimensions(
                                        w,
                                        d,
                                        a.canineWidth().value(),
                                        a.canineDepth().value()),
                                points)
                        .ifPresent(fits::add);
            }
        }
        return fits;
    }

    /** A curve through all measured points; none where no curve of the family runs through them. */
    private static Optional<ArchFit> through(ArchFamily family, ArchDimensions m, Landmarks points) {
        if (family == ArchFamily.SPLINE) {
            return Optional.of(ArchFit.of(family, points));
        }
        try {
            return Optional.of(fit(family, family.of(m), points));
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private static ArchFit fit(ArchFamily family, ArchCurve curve, Landmarks points) {
        return new ArchFit(family, curve, Goodness.of(curve, points));
    }

    /** Measured points as landmarks: the front stands for the central incisors. */
    private static Landmarks corners(double w, double d, double... canine) {
        List<Landmarks.Tooth> points = new ArrayList<>();
        points.add(new Landmarks.Tooth(46, new Point(-w / 2, 0)));
        if (canine.length > 0) {
            points.add(new Landmarks.Tooth(43, new Point(-canine[0] / 2, d - canine[1])));
        }
        points.add(new Landmarks.Tooth(41, new Point(0, d)));
        if (canine.length > 0) {
            points.add(new Landmarks.Tooth(33, new Point(canine[0] / 2, d - canine[1])));
        }
        points.add(new Landmarks.Tooth(36, new Point(w / 2, 0)));
        return new Landmarks(points, 0);
    }
}
