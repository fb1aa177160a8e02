package dev.fairlead.model;

import java.util.Locale;

/** A value of a closed list as it is written in a case file; implemented by enums. */
public interface Choice {
    /** The enum's own name. */
    String name();

    /** The word in the case file: lower case with dashes. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
