package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.mechanics.geometry.FoldRange;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Section;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Gathers what the beam model needs from a case: the folds as they were measured on the bench. */
final class BeamInputs {
    private static final Tooth[] CENTRALS = {Tooth.of(31), Tooth.of(41)};
    private static final Tooth[] LATERALS = {Tooth.of(32), Tooth.of(42)};

    /** Two brackets are at least so far apart, mm; nearer ones are a slip of the pen. */
    private static final double APART = 1;

    private final Case c;
    private final PatientArch arch;
    private final WireLine line;
    private final List<Measured> needed = new ArrayList<>();

    BeamInputs(Case c, Measured standOffRight, Measured standOffLeft) {
        this(c, standOffRight, standOffLeft, true);
    }

    /** The inputs of a wire whose folds need not have been measured: what was not is as planned, with a margin. */
    static BeamInputs withoutFolds(Case c, Measured standOffRight, Measured standOffLeft) {
        return new BeamInputs(c, standOffRight, standOffLeft, false);
    }

    private BeamInputs(Case c, Measured standOffRight, Measured standOffLeft, boolean asMeasured) {
        this.c = c;
        this.arch = PatientArch.of(c);
        this.line = WireLine.of(c, arch);
        needed.addAll(List.of(standOffRight, standOffLeft, c.wire().size()));
        needed.addAll(Arrays.asList(arch.inputs()));
        needed.addAll(List.of(line.front(), line.left(), line.right()));
        for (Side side : Side.values()) {
            Fold f = c.bench().fold(side);
            needed.add(c.hardware().tube(side).length());
            if (asMeasured) {
                needed.addAll(List.of(f.bendRadius(), f.length(), f.buccalTip()));
            }
        }
        for (Tooth t : Tooth.LOWER_INCISORS) {
            needed.add(c.hardware().bracket(t).fromMidline());
        }
    }

    PatientArch arch() {
        return arch;
    }

    /** What is missing for an answer; empty when the model can be asked. */
    List<String> missing() {
        List<String> missing = List.of();
        for (Measured m : needed) {
            missing = Pointers.union(missing, m.known() ? List.of() : m.applies() ? m.missing() : List.of("/wire"));
        }
        if (!c.wire().section().is(Section.ROUND)) {
            missing = Pointers.union(missing, List.of("/wire/section"));
        }
        if (Elastic.of(c.wire()).isEmpty()) {
            missing = Pointers.union(missing, Elastic.missing(c.wire()));
        }
        if (missing.isEmpty() && mean(CENTRALS) + APART > mean(LATERALS)) {
            return Tooth.LOWER_INCISORS.stream()
                    .map(t -> "/hardware/brackets/" + t + "/fromMidline")
                    .toList();
        }
        return missing;
    }

    /** True when the model would be asked the same of both, whether it could answer or not. */
    boolean same(BeamInputs other) {
        return needed.equals(other.needed)
                && c.wire().section().equals(other.c.wire().section())
                && c.wire().material().equals(other.c.wire().material())
                && c.wire().modulus().equals(other.c.wire().modulus());
    }

    /** The question; only when nothing is missing. */
    BeamCase ask(double standOffRight, double standOffLeft) {
        return ask(fold(Side.RIGHT), fold(Side.LEFT), standOffRight, standOffLeft);
    }

    private BeamCase ask(FoldSpec right, FoldSpec left, double standOffRight, double standOffLeft) {
        double tube = (c.hardware().left().length().value()
                        + c.hardware().right().length().value())
                / 2;
        return new BeamCase(
                c.wire().size().value(),
                line.curve(),
                tube,
                line.along(mean(CENTRALS)),
                line.along(mean(LATERALS)),
                right,
                left,
                standOffRight,
                standOffLeft,
                OptionalDouble.empty());
    }

    /** The question with folds as far as they are known; only when nothing is missing. */
    BandAsk band(Elastic e, List<Double> limits, double standOffRight, double standOffLeft) {
        FoldRange right = FoldGuess.of(c, Side.RIGHT);
        FoldRange left = FoldGuess.of(c, Side.LEFT);
        return new BandAsk(ask(right.nominal(), left.nominal(), standOffRight, standOffLeft), e, right, left, limits);
    }

    private double mean(Tooth[] pair) {
        return (c.hardware().bracket(pair[0]).fromMidline().value()
                        + c.hardware().bracket(pair[1]).fromMidline().value())
                / 2;
    }

    private FoldSpec fold(Side side) {
        return BeamCase.fold(
                FoldShape.bendRadius(c, side).value(),
                FoldShape.leg(c, side).value(),
                c.bench().fold(side).buccalTip().value());
    }
}
