package dev.fairlead.model;

/**
 * Kinds of measurement with the error that is assumed when a case states none and has no duplicates of its own. All are
 * one standard deviation of a single reading.
 */
public enum ErrorKind {
    /** No error: a count, a nominal size, a planned value. */
    NONE(0, "exact"),
    TOOTH_WIDTH(
            0.10,
            "caliper repeat error of one tooth 0.05-0.15 mm; from memory (raters of child models agree with ICC 0.93-1.00: Nadelman 2025, PMC12904138)"),
    CONTACT(0.15, "displacement of one contact point, taken as two caliper readings; common practice, no source"),
    SEGMENT(0.25, "divider reading of an arch segment; common practice, no source"),
    ARCH_DIMENSION(0.30, "width or depth on a model; common practice, no source"),
    FILM_ANGLE(
            2.5,
            "lower incisor to mandibular plane on one film, 2.3-2.5 degrees worked out from landmark errors of about 0.6 mm (Trpkova 1997, Am J Orthod 112:165, figures from memory); 4 degrees where the apex is poorly seen"),
    SKELETAL_ANGLE(
            1.3,
            "angle between skeletal points: SNA on two films of each of 100 adults differed with SD 1.85 degrees (PMC9700941, 2022), by root 2 for one film"),
    PLANE_ANGLE(
            1.6,
            "mandibular plane to Frankfort horizontal, standard deviation of one reading 1.6 degrees on 30 films (Delamare 2012, as an abstract); taken over for the occlusal plane, where 1.2-1.9 degrees were worked out from landmark errors"),
    TOOTH_AXIS_ANGLE(
            5,
            "angle between two molar axes on a panoramic film: 27 % of tooth axes lay within 2.5 degrees of the truth (Angle Orthod 78:475), which is a standard deviation of about 7 for one axis; 5 for neighbours is an estimate"),
    FILM_LENGTH(0.5, "repeat error of a distance on a lateral cephalogram; common practice, no source"),
    FILM_RADIUS(
            0.8,
            "share of the distance from lower incisor edge to apex, 0.6-1.0 mm worked out from landmark errors of about 0.6 mm (Trpkova 1997, figures from memory); the apex is hard to see"),
    PROBE(
            0.4,
            "reading of a periodontal probe: probing depths of calibrated examiners, standard error 0.38-0.40 mm (PubMed 14974813); taken over for gingiva"),
    BITE(
            0.25,
            "overjet and overbite with a ruler, ± 0.5 mm taken as two standard deviations; common practice, no source for the figure (traits of the bite repeat with ICC 0.89-1.0: Ovsenik 2007, Eur J Orthod 29:88)"),
    MIDLINE(
            0.5,
            "midline by eye, ± 1 mm taken as two standard deviations; common practice, no source for the figure (ICC 0.68: Ovsenik 2007, Eur J Orthod 29:88)"),
    MOUTH_RULER(
            0.2, "ruler in the mouth, ± 0.3 to 0.5 mm taken as two standard deviations; common practice, no source"),
    TISSUE_GAP(0.2, "gap between wire and tissue, tried with a wire of known size; common practice, no source"),
    FEELER(0.1, "gap beside a wire, tried with a wire or feeler of known size; common practice, no source"),
    CALIPER(0.05, "calliper on the beaks of pliers; common practice, no source"),
    GINGIVA(
            0.2,
            "gingival thickness by transgingival probing; common practice, no source for the figure (a probe was off by -0.17 to +0.04 mm on average: Kloukos 2018, J Periodontol 89:1300)"),
    BENCH_LENGTH(0.2, "ruler or caliper on a bent wire; common practice, no source"),
    BENCH_ANGLE(
            1.5,
            "bend laid on a printed protractor, ± 3 degrees taken as two standard deviations; common practice, no source"),
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

    /** Read in the mouth, where a zero says that nothing was found. */
    public boolean inTheMouth() {
        return this == PROBE || this == MOUTH_RULER || this == TISSUE_GAP || this == BITE || this == MIDLINE;
    }

    public String source() {
        return source;
    }
}
