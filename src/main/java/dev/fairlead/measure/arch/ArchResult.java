package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.ArchCurve;
import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.ArchPlaces;
import dev.fairlead.measure.archform.ArchShape;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.archform.Reshaping;
import dev.fairlead.measure.archform.SixthDegreeArch;
import dev.fairlead.measure.archform.WireMisfit;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;
import java.util.Optional;

/**
 * Form of one child's arch, for people and pictures. Points in mm: x to the patient's left, y forward from the line
 * through the posterior ends.
 *
 * @param basis what the curve was made from
 * @param remark why landmarks that were given are not used; empty when there is nothing to say
 * @param width between the posterior ends, mm
 * @param depth of the front from the line through them, mm
 * @param perimeter length of the curve, mm
 * @param formIndex (Dc/Dm)/(Wc/Wm), where the canines are known
 * @param drawn what needs a curve; empty when the arch is not known
 */
public record ArchResult(
        Basis basis,
        String remark,
        Measured width,
        Measured depth,
        Measured perimeter,
        Measured formIndex,
        Optional<Drawn> drawn) {

    /**
     * The curve and what lies on it.
     *
     * @param fits a curve of every family that the measurements bear, with its goodness
     * @param curve the one that is used
     * @param canines width and depth that the form class rests on were measured, not taken from the curve
     * @param shape class and size
     * @param places where the teeth stand along the curve
     * @param sides the buccal segment of each side, left first
     * @param wire the form of the wire laid over the arch, where it is known
     */
    public record Drawn(
            List<ArchFit> fits,
            ArchCurve curve,
            boolean canines,
            ArchShape shape,
            ArchPlaces places,
            List<Segment> sides,
            Optional<Wire> wire) {
        public Drawn {
            fits = List.copyOf(fits);
            sides = List.copyOf(sides);
        }
    }

    /**
     * The buccal segment of one side, as a straight line.
     *
     * @param lateral distal of the lateral incisor once the incisors stand in line, where their widths are known
     * @param molar mesial of the first molar
     * @param available measured room, mm
     * @param required need of canine and premolars, mm
     * @param shortage what the side lacks, with half of what the incisors lack, mm
     */
    public record Segment(
            Side side,
            Optional<Point> lateral,
            Point molar,
            Measured available,
            Measured required,
            Measured shortage) {}

    /**
     * A wire's form on the arch.
     *
     * @param curve its form in its own place; slide it by {@link WireMisfit#forward()} to draw it
     * @param rms root mean square of the misfit, mm
     * @param worst largest misfit, mm
     * @param misfit the same with place and words
     * @param change what would make it follow the arch altogether
     */
    public record Wire(SixthDegreeArch curve, Measured rms, Measured worst, WireMisfit misfit, Reshaping change) {}
}
