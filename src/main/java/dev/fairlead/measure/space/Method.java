package dev.fairlead.measure.space;

import dev.fairlead.model.Choice;

/** Ways to the width of canine and premolars of one side, in the order in which the need is taken from them. */
public enum Method implements Choice {
    /** All three erupted and measured. */
    MEASURED("measured teeth", "width of canine + first premolar + second premolar", "common-practice"),
    /**
     * Measured on a film and corrected by a tooth that can be measured directly; teeth that have erupted are measured
     * directly.
     */
    RADIOGRAPH(
            "radiograph",
            "image width x true width of the reference / image width of the reference, summed",
            "huckaba-1964"),
    TANAKA_JOHNSTON("incisor sum, simple rule", "LI / 2 + 10.5", "tanaka-johnston-1974"),
    PROBABILITY_TABLE("incisor sum, probability table", "read at LI, linear between printed values", "moyers-1973"),
    REGRESSION("incisor sum, population regression", "a + b x LI", "");

    private final String title;
    private final String formula;
    private final String source;

    Method(String title, String formula, String source) {
        this.title = title;
        this.formula = formula;
        this.source = source;
    }

    public String title() {
        return title;
    }

    public String formula() {
        return formula;
    }

    /** Key of the bibliography; empty where it depends on the population. */
    public String source() {
        return source;
    }
}
