package dev.fairlead.measure.space;

import dev.fairlead.model.Measured;

/**
 * The width of canine and premolars of one side by one method.
 *
 * @param value mm; does not apply where the method cannot be used in this child
 * @param substituted the formula with this case's values
 * @param remark why it does not apply, or what limits it; may be empty
 * @param source key of the bibliography
 */
public record Prediction(Method method, Measured value, String substituted, String remark, String source) {
    static Prediction of(Method method, Measured value, String substituted, String remark) {
        return new Prediction(method, value, substituted, remark, method.source());
    }
}
