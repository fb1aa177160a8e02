package dev.fairlead.facts;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Where facts of this type come from in a case: what is missing when a case yields none of them. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface StandsAt {
    /** JSON Pointer of the section. */
    String value();
}
