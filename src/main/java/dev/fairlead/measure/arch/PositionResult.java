package dev.fairlead.measure.arch;

import dev.fairlead.measure.position.SidedPlan;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What the incisors have to do, what the plan makes them do, and where that leaves them, for people and pictures.
 *
 * @param left need of the left side
 * @param right need of the right side
 * @param equalPlan advancement after which neither side lacks room when both advance alike, mm; 0 when none is needed
 * @param atMidline advancement of the midline when each side gets only what it needs, mm
 * @param gains room that the planned advancement gives by each published or own figure, smallest first
 * @param angles angles and distances before and after, with their norms
 * @param sided what the plan does to a stiff front whose laterals advance as planned, where arch and plan are known
 */
public record PositionResult(
        SideNeed left,
        SideNeed right,
        Measured equalPlan,
        Measured atMidline,
        List<Gain> gains,
        List<Shift> angles,
        Optional<Sided> sided) {
    public PositionResult {
        gains = List.copyOf(gains);
        angles = List.copyOf(angles);
    }

    /**
     * Advancement that one side needs; negative where it has room to spare. The answer is {@link #chord}: segments are
     * measured and needed as straight lines from lateral to molar. Length along the arch and the 2:1 rule stand beside
     * it.
     *
     * @param chord on the child's own arch, incisors moved forward as a block, straight distance, mm
     * @param alongArch on the child's own arch, distance along the deepened curve, mm; does not apply where no depth
     *     gives it
     * @param rule 1 mm of advancement for 1 mm of the side's room, mm
     * @param planned advancement that is planned, mm
     * @param spare planned less needed, mm
     */
    public record SideNeed(
            Side side, Measured chord, Measured alongArch, Measured rule, Measured planned, Measured spare) {}

    /**
     * Room gained by the planned advancement.
     *
     * @param perMm mm of perimeter per mm of advancement
     * @param gained in all, mm
     * @param lacking what the arch still lacks then, mm; negative when there is room to spare
     */
    public record Gain(String name, String source, double perMm, Measured gained, Measured lacking) {}

    /**
     * An angle or distance before and after, with the norm it is judged against: mean, and how far the norm reaches to
     * either side.
     */
    public record Shift(
            String name, Unit unit, Measured before, Measured after, double norm, double spread, String source) {}

    /**
     * What an unequal plan means.
     *
     * @param openings travel of each fold that advances the laterals as planned, mm
     * @param front movement of the front
     */
    public record Sided(SidedPlan openings, SidedPlan.Front front) {}

    public SideNeed side(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
