package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.Laying;
import dev.fairlead.measure.archform.SixthDegreeArch;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Misfit of a wire's form to a child's arch, with first-order error. The form is the sixth-degree polynomial of its
 * width and depth and of its width at the depth of the child's canines; without canines on either side nothing is said
 * of the form.
 *
 * @param rms root mean square over the length of the arch, mm
 * @param worst largest distance, mm
 * @param laid the wire as it lies on the arch, where both are known
 */
public record FormMisfit(Measured rms, Measured worst, Optional<Laid> laid) {

    /** The wire's curve and how it lies. */
    public record Laid(SixthDegreeArch wire, Laying laying) {}

    public static FormMisfit of(Case c, PatientArch arch) {
        WirePlan w = c.wire();
        List<String> missing = missing(c, arch);
        if (!missing.isEmpty()) {
            return unknown(missing, missing);
        }
        if (!arch.formKnown()
                || !w.formMolarWidth().known()
                || !w.formDepth().known()
                || !w.formCanineWidth().known()) {
            return new FormMisfit(Measured.notApplicable(), Measured.notApplicable(), Optional.empty());
        }
        Measured[] inputs = Arrays.copyOf(arch.inputs(), arch.inputs().length + 3);
        int n = arch.inputs().length;
        inputs[n] = w.formMolarWidth();
        inputs[n + 1] = w.formDepth();
        inputs[n + 2] = w.formCanineWidth();
        double[] x = new double[inputs.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = inputs[i].value();
        }
        SixthDegreeArch wire = wire(arch, x);
        Laying laying = Laying.of(arch.curve(), wire);
        if (!laying.settled()) {
            // such a form has no place where it fits best: only trying it on the model tells
            return unknown(List.of("/bench/misfitRms"), List.of("/bench/misfitWorst"));
        }
        return withErrors(arch, inputs, x, wire, laying);
    }

    private static FormMisfit withErrors(
            PatientArch arch, Measured[] inputs, double[] x, SixthDegreeArch wire, Laying laying) {
        Laying.Misfit here = laying.misfit();
        Measured rms = Measured.exact(here.rms(), Unit.MM);
        Measured worst = Measured.exact(here.worst(), Unit.MM);
        for (int i = 0; i < x.length; i++) {
            double sd = inputs[i].sd();
            if (sd > 0) {
                double at = x[i];
                // one-sided: about a perfect fit the misfit grows to both sides, and a central difference would see
                // nothing
                x[i] = at + sd;
                Laying.Misfit moved = laying.near(arch.curve(x), wire(arch, x));
                x[i] = at;
                rms = rms.plus(inputs[i].chain(0, (moved.rms() - here.rms()) / sd, Unit.MM));
                worst = worst.plus(inputs[i].chain(0, (moved.worst() - here.worst()) / sd, Unit.MM));
            }
        }
        return new FormMisfit(rms, worst, Optional.of(new Laid(wire, laying)));
    }

    private static SixthDegreeArch wire(PatientArch arch, double[] x) {
        int n = x.length - 3;
        return SixthDegreeArch.near(x[n], x[n + 1], x[n + 2], arch.canineDepth(x));
    }

    private static FormMisfit unknown(List<String> rms, List<String> worst) {
        return new FormMisfit(Measured.unknown(rms), Measured.unknown(worst), Optional.empty());
    }

    private static List<String> missing(Case c, PatientArch arch) {
        WirePlan w = c.wire();
        List<String> missing = List.of();
        if (!arch.formKnown()) {
            dev.fairlead.model.ArchMeasures a = c.arch();
            for (Measured m : List.of(a.molarWidth(), a.molarDepth(), a.canineWidth(), a.canineDepth())) {
                missing = Pointers.union(missing, m.missing());
            }
        }
        for (Measured m : List.of(w.formMolarWidth(), w.formDepth(), w.formCanineWidth())) {
            missing = Pointers.union(missing, m.missing());
        }
        return missing;
    }
}
