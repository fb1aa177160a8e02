package dev.fairlead.measure.archform;

import java.util.Locale;

/** Lengths as they are told to a person: tenths of a millimetre, with a point, in every locale. */
final class Words {
    private Words() {}

    static String mm(double length) {
        return String.format(Locale.ROOT, "%.1f mm", length);
    }
}
