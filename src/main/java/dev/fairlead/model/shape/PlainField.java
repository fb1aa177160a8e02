package dev.fairlead.model.shape;

import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Field;
import dev.fairlead.model.Unit;
import java.lang.annotation.Annotation;

/**
 * The contents of a {@link Field} annotation, copied once: an annotation answers through reflection, which is slow on
 * every read of a case.
 */
record PlainField(
        String value,
        String label,
        String key,
        Unit unit,
        double low,
        double high,
        ErrorKind error,
        boolean mayNotApply,
        boolean planned,
        double step,
        boolean required,
        String pattern,
        boolean zeroIsNone)
        implements Field {
    static PlainField of(Field f) {
        return new PlainField(
                f.value(),
                f.label(),
                f.key(),
                f.unit(),
                f.low(),
                f.high(),
                f.error(),
                f.mayNotApply(),
                f.planned(),
                f.step(),
                f.required(),
                f.pattern(),
                f.zeroIsNone());
    }

    @Override
    public Class<? extends Annotation> annotationType() {
        return Field.class;
    }
}
