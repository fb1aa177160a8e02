package dev.fairlead.model;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a component of a case record means: the one place from which reading, the JSON Schema, the blank case, forms and
 * table mappings take wording, unit and plausible range.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Field {
    /** One sentence on what is recorded and how it is taken. */
    String value();

    /** A short label for forms; empty when the key itself reads well. */
    String label() default "";

    /** The key in the file where it is not the component's name. */
    String key() default "";

    /** The unit of a plain number. */
    Unit unit() default Unit.COUNT;

    /** The lowest value that can be true; below it the input is refused as a slip. */
    double low() default 0;

    /** The highest value that can be true; above it the input is refused as a slip. */
    double high() default 1e6;

    /** How well it can be measured. */
    ErrorKind error() default ErrorKind.NONE;

    /** True where 0 says that there is none to be seen, which is no reading and has no error. */
    boolean zeroIsNone() default false;

    /** True where "does not apply" can be a true statement. */
    boolean mayNotApply() default false;

    /** True for a variable of the plan, which a what-if search may change; false for a fact of the patient. */
    boolean planned() default false;

    /** The practical step in which a planned value changes, in {@link #unit()}; 0 when it comes from a list. */
    double step() default 0;

    /** True when a case without it cannot be read at all. */
    boolean required() default false;

    /** The regular expression that a text has to match as a whole; empty when any short text will do. */
    String pattern() default "";
}
