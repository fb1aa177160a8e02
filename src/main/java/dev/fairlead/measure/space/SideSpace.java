package dev.fairlead.measure.space;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;

/**
 * Room and need of one side.
 *
 * @param methods the width of canine and premolars by every method, in the order of {@link Method}
 * @param chosen the one that the need is taken from: measured, else radiograph, else the simple rule
 * @param available measured buccal segment, mm
 * @param shortage required less available, with half of what the incisors lack, mm
 * @param spread largest less smallest prediction, mm; does not apply when all three teeth were measured
 * @param primaryWidths primary canine and molars, mm
 * @param leeway primary widths less required, mm
 */
public record SideSpace(
        Side side,
        List<Prediction> methods,
        Prediction chosen,
        Measured available,
        Measured shortage,
        Measured spread,
        Measured primaryWidths,
        Measured leeway) {
    /** Width that canine and premolars need, mm. */
    public Measured required() {
        return chosen.value();
    }

    /** The result of one method. */
    public Prediction by(Method method) {
        return methods.get(method.ordinal());
    }
}
