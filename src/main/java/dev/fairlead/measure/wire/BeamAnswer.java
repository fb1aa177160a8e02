package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.answer.BandInput;
import dev.fairlead.measure.mechanics.answer.Mechanics;
import dev.fairlead.measure.mechanics.answer.Result;
import dev.fairlead.measure.mechanics.answer.Result.Unsolved;
import dev.fairlead.measure.mechanics.answer.Setup;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.answer.Solution;
import java.util.List;
import java.util.Optional;

/**
 * What the beam model answers for one tied-in wire of modulus {@link BeamCase#E}, N and MPa.
 *
 * @param low least total labial force over both tube conditions and the usual ways of tying
 * @param high most of the same
 * @param hinged total labial force, tail hinging in the tube, four tied
 * @param held the same, tail held by the tube
 * @param stress peak bending stress, tail held, four tied
 * @param upHinged total vertical force, tail hinging, occlusal positive; means something only with measured heights
 * @param upHeld the same, tail held
 * @param failure why there is no answer; empty when there is one. All numbers are then without meaning
 */
record BeamAnswer(
        double low,
        double high,
        double hinged,
        double held,
        double stress,
        double upHinged,
        double upHeld,
        String failure) {
    private static final List<TailSupport> TUBES = List.of(TailSupport.HINGE_SPIN, TailSupport.TWO_POINT);
    private static final BeamAnswer NOTHING = new BeamAnswer(0, 0, 0, 0, 0, 0, 0, "");

    boolean found() {
        return failure.isEmpty();
    }

    private static BeamAnswer none(String why) {
        return new BeamAnswer(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, why);
    }

    /** Solves the case under both tube conditions and the usual ways of tying. */
    static BeamAnswer of(BeamCase c) {
        return of(c, BandInput.USUAL_TIES);
    }

    /**
     * The same with all four brackets tied alone, so that low and high lie nearer together: for the vertical force,
     * which is not asked of other ties.
     */
    static BeamAnswer ofFourTied(BeamCase c) {
        return of(c, List.of(Ties.FOUR));
    }

    private static BeamAnswer of(BeamCase c, List<Ties> ties) {
        if (c.standOffRight() == 0 && c.standOffLeft() == 0) {
            return NOTHING;
        }
        Optional<Setup> tiedIn = c.tiedIn();
        if (tiedIn.isEmpty()) {
            return none("a fold of this size cannot be opened far enough for the stand-off");
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        Solution[] usual = new Solution[TUBES.size()];
        List<Result> results = Mechanics.solveEach(tiedIn.get(), TUBES, ties);
        for (int i = 0; i < results.size(); i++) {
            if (results.get(i) instanceof Unsolved unsolved) {
                return none("the beam model found no equilibrium (" + unsolved.reason() + ")");
            }
            Solution s = (Solution) results.get(i);
            low = Math.min(low, s.forward());
            high = Math.max(high, s.forward());
            if (ties.get(i % ties.size()) == Ties.FOUR) {
                usual[i / ties.size()] = s;
            }
        }
        return new BeamAnswer(
                low,
                high,
                usual[0].forward(),
                usual[1].forward(),
                usual[1].peak().inner(),
                usual[0].vertical(),
                usual[1].vertical(),
                "");
    }
}
