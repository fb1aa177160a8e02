package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.answer.BandInput;
import dev.fairlead.measure.mechanics.answer.BandResult;
import dev.fairlead.measure.mechanics.answer.ForceBands;
import dev.fairlead.measure.mechanics.answer.ForceEnds;
import dev.fairlead.measure.mechanics.answer.Mesh;
import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.WireSpec;
import dev.fairlead.measure.mechanics.geometry.FoldRange;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the beam model is asked for a whole band. Equal questions have equal answers.
 *
 * @param nominal wire, arch, stand-offs, and the folds as they most likely are
 * @param limits stresses whose stand-off is wanted, MPa
 */
record BandAsk(BeamCase nominal, Elastic modulus, FoldRange right, FoldRange left, List<Double> limits) {
    BandResult answer() {
        return ForceBands.of(input());
    }

    /** The ends of the band alone. */
    Optional<ForceEnds> ends() {
        return ForceBands.ends(input());
    }

    private BandInput input() {
        return new BandInput(
                new WireSpec(nominal.d(), modulus.usual(), BeamCase.NU),
                modulus.low(),
                modulus.high(),
                nominal.arch(OptionalDouble.empty()),
                right,
                left,
                nominal.standOffRight(),
                nominal.standOffLeft(),
                BandInput.USUAL_TIES,
                Seat.LEVEL,
                limits,
                Mesh.STANDARD);
    }
}
