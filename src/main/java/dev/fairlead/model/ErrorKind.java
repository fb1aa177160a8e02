package dev.fairlead.model;

/**
 * Kinds of measurement with the error that is assumed when a case states none and has no duplicates of its own. All are
 * one standard deviation of a single reading.
 */
public enum ErrorKind {
    /** No error: a count, a nominal size, a planned value. */
    NONE(0, "exact"),
    TOOTH_WIDTH(0.10, "caliper repeat error of one tooth 0.05-0.15 mm; from memory"),
    CONTACT(0.20, "displacement of one contact point, taken as two caliper readings; common practice, no source"),
    SEGMENT(0.25, "divider reading of an arch segment; common practice, no source"),
    ARCH_DIMENSION(0.30, "width or depth on a model; common practice, no source"),
    FILM_ANGLE(
            2.0,
            "repeat error of lower-incisor angles on a head film, about 2-3 degrees (Baumrind & Frantz 1971); from memory"),
    SKELETAL_ANGLE(
            1.3,
            "angle between skeletal points: SNA on two films of each of 100 adults differed with SD 1.85 degrees (PMC9700941, 2022), by root 2 for one film"),
    FILM_LENGTH(0.5, "repeat error of a distance on a head film; common practice, no source"),
    CLINICAL_LENGTH(
            0.4,
            "reading of a probe or ruler in the mouth: probing depths of calibrated examiners, standard error 0.38-0.40 mm (PubMed 14974813); taken over for other lengths"),
    GINGIVA(0.2, "gingival thickness by transgingival probing; common practice, no source"),
    BENCH_LENGTH(0.2, "ruler or caliper on a bent wire; common practice, no source"),
    BENCH_ANGLE(3.0, "angle of a bend judged on the bench; common practice, no source"),
    GAUGE(10, "reading of a spring force gauge in gf; common practice, no source"),
    PERCENTAGE(5, "plaque score in per cent points; common practice, no source");

    private final double defaultSd;
    private final String source;

    ErrorKind(double defaultSd, String source) {
        this.defaultSd = defaultSd;
        this.source = source;
    }

    /** One standard deviation of a single reading, in the unit of the field that bears this kind. */
    public double defaultSd() {
        return defaultSd;
    }

    public String source() {
        return source;
    }
}
