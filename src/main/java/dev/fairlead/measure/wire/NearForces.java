package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Forces of variants of one case that differ from it by errors of measurement: the beam model is solved for the case
 * itself, and the variants follow it by the powers of {@link ForceLaw}. Solving each variant would take a minute where
 * this takes a moment.
 */
public final class NearForces implements ForceModel {
    private record Solved(Forces forces, Optional<ForceLaw> law) {}

    private final List<Solved> visits = new ArrayList<>();

    /** {@code exact} tells the forces of the case itself, or of its plan where it has no visits. */
    public NearForces(Case alone, ForceModel exact) {
        Case base = alone.visits().isEmpty() ? ForceModel.withPlannedVisit(alone) : alone;
        PatientArch arch = PatientArch.of(base);
        for (int i = 0; i < base.visits().size(); i++) {
            Forces f = exact.at(base, i, Workbook.none());
            visits.add(
                    new Solved(f, f.peakStress().known() ? Optional.of(ForceLaw.of(base, i, arch)) : Optional.empty()));
        }
    }

    @Override
    public Forces at(Case c, int index, Workbook book) {
        Solved s = visits.get(index);
        return s.law()
                .map(law -> law.near(s.forces(), ForceLaw.of(c, index, PatientArch.of(c))))
                .orElse(s.forces());
    }
}
