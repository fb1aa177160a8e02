package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.ArchDimensions;
import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.ArchPlaces;
import dev.fairlead.measure.archform.BetaArch;
import dev.fairlead.measure.archform.FitSlopes;
import dev.fairlead.measure.archform.Landmarks;
import dev.fairlead.measure.archform.SixthDegreeArch;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The one smooth curve that stands for a child's arch. From landmarks: the beta function or the sixth-degree
 * polynomial, whichever leaves the smaller residual SD for the numbers that it fits. From widths: the sixth-degree
 * polynomial through the canine points where they were measured, else the beta function of width and depth.
 */
public final class PatientArch {
    private static final int CANINE = 3;

    private final Basis basis;
    private final Measured[] inputs;
    private final Optional<CaseLandmarks> landmarks;
    private final String remark;
    private @Nullable ArchCurve curve;
    private double canineDepth;

    private PatientArch(Basis basis, Measured[] inputs, Optional<CaseLandmarks> landmarks, String remark) {
        this.basis = basis;
        this.inputs = inputs;
        this.landmarks = landmarks;
        this.remark = remark;
    }

    public static PatientArch of(Case c) {
        CaseLandmarks.Found found = CaseLandmarks.of(c);
        if (found.landmarks().isPresent()) {
            return ofLandmarks(found.landmarks().get());
        }
        dev.fairlead.model.ArchMeasures a = c.arch();
        boolean whole = a.molarWidth().known() && a.molarDepth().known();
        boolean canines = a.canineWidth().known() && a.canineDepth().known();
        Basis basis = !whole ? Basis.NONE : canines ? Basis.WIDTHS_AND_CANINES : Basis.WIDTHS;
        Measured[] inputs = basis == Basis.WIDTHS_AND_CANINES || basis == Basis.NONE
                ? new Measured[] {a.molarWidth(), a.molarDepth(), a.canineWidth(), a.canineDepth()}
                : new Measured[] {a.molarWidth(), a.molarDepth()};
        return new PatientArch(basis, inputs, Optional.empty(), found.why());
    }

    private static PatientArch ofLandmarks(CaseLandmarks given) {
        ArchFit fit = ArchFit.best(given.normal());
        double[] numbers = FitSlopes.numbers(fit.curve());
        FitSlopes slopes = FitSlopes.of(fit.curve(), given.normal());
        Measured[] inputs = IntStream.range(0, numbers.length)
                .mapToObj(j -> given.measured(
                        numbers[j],
                        j < 2 ? Unit.MM : Unit.RATIO,
                        slopes.slopes().get(j)))
                .toArray(Measured[]::new);
        PatientArch arch = new PatientArch(Basis.LANDMARKS, inputs, Optional.of(given), "");
        double canine = ArchPlaces.of(fit.curve(), given.normal())
                .position(CANINE)
                .orElseGet(
                        () -> ArchPlaces.average(fit.curve()).position(CANINE).orElseThrow());
        arch.canineDepth = ArchDimensions.of(fit.curve(), canine).canineDepth();
        return arch;
    }

    public Basis basis() {
        return basis;
    }

    public boolean known() {
        return basis != Basis.NONE;
    }

    /** True when canine points or landmarks tell more than width and depth. */
    public boolean formKnown() {
        return basis == Basis.LANDMARKS || basis == Basis.WIDTHS_AND_CANINES;
    }

    /** Why landmarks that were given are not used; empty when there is nothing to say. */
    public String remark() {
        return remark;
    }

    /** The landmarks in normal position, where they are used. */
    public Optional<Landmarks> landmarks() {
        return landmarks.map(CaseLandmarks::normal);
    }

    /**
     * The measured numbers that fix the curve, in the order that {@link #curve(double[])} takes; unknown ones where
     * there is none.
     */
    public Measured[] inputs() {
        return inputs;
    }

    /** Distance between the posterior ends, mm. */
    public Measured width() {
        return inputs[0];
    }

    /** Distance of the front from the line through the posterior ends, mm. */
    public Measured depth() {
        return inputs[1];
    }

    /** The curve; refused when nothing is known of the arch. */
    public ArchCurve curve() {
        if (!known()) {
            throw new IllegalStateException("the arch is not known");
        }
        if (curve == null) {
            curve = curve(values());
        }
        return curve;
    }

    double[] values() {
        double[] x = new double[inputs.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = inputs[i].value();
        }
        return x;
    }

    /** The curve that other values of the inputs would give. */
    public ArchCurve curve(double[] x) {
        return switch (basis) {
            case LANDMARKS -> FitSlopes.curve(x);
            case WIDTHS_AND_CANINES -> SixthDegreeArch.near(x[0], x[1], x[2], x[3]);
            default -> new BetaArch(x[0], x[1]);
        };
    }

    /** How far behind the front the canines stand, mm, for these inputs; only where the form is known. */
    double canineDepth(double[] x) {
        return basis == Basis.WIDTHS_AND_CANINES ? x[3] : canineDepth;
    }
}
