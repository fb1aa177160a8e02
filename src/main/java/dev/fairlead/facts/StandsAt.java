package dev.fairlead.facts;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Where facts of this type come from in a case: what is missing when a case yields none of them. The compiler makes a
 * builder of each such record, so that every component is given by its name.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@RecordBuilder.Template(
        options = @RecordBuilder.Options(enableWither = false, enableGetters = false, addStaticBuilder = false))
public @interface StandsAt {
    /** JSON Pointer of the section. */
    String value();
}
