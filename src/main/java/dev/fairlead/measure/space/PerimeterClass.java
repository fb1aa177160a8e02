package dev.fairlead.measure.space;

import dev.fairlead.model.Measured;

/**
 * Classes of a shortage of arch perimeter (Carey 1949, as cited in secondary texts): information beside the verdicts,
 * made for the permanent dentition. Here each class takes in its upper end: none, up to 2.5 mm, up to 5 mm, above.
 */
public enum PerimeterClass {
    NONE("no shortage"),
    UP_TO_2_5("up to 2.5 mm: in the permanent dentition the class of proximal reduction"),
    UP_TO_5("2.5 to 5 mm: in the permanent dentition the class of second premolars"),
    ABOVE_5("above 5 mm: in the permanent dentition the class of first premolars (this class is from memory)");

    private final String words;

    PerimeterClass(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The class of a shortage in mm, positive when room is lacking. */
    public static PerimeterClass of(double shortage) {
        double x = shortage - Measured.ROUNDING;
        return x <= 0 ? NONE : x <= 2.5 ? UP_TO_2_5 : x <= 5 ? UP_TO_5 : ABOVE_5;
    }
}
