package dev.fairlead.measure.archform;

/** Class of an arch by its form index; between two classes it says so instead of choosing. */
public enum ArchForm {
    SQUARE("square"),
    BETWEEN_SQUARE_AND_OVOID("between square and ovoid"),
    OVOID("ovoid"),
    BETWEEN_OVOID_AND_TAPERED("between ovoid and tapered"),
    TAPERED("tapered");

    private final String words;

    ArchForm(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /**
     * Limits of the classes. The index is published, numeric cut-offs for it at the first-molar tubes are not: these
     * are our own convention. At a canine width 0.56 of the molar width the index of half an ellipse is 0.31, of the
     * beta function 0.46, of a parabola 0.56; the classes meet midway between them, and 0.015 to either side belongs to
     * no class.
     */
    public record CutOffs(double squareTo, double ovoidFrom, double ovoidTo, double taperedFrom) {
        public static final CutOffs OWN_CONVENTION = new CutOffs(0.37, 0.40, 0.495, 0.525);

        public CutOffs {
            if (!(0 < squareTo && squareTo < ovoidFrom && ovoidFrom < ovoidTo && ovoidTo < taperedFrom)) {
                throw new IllegalArgumentException("the cut-offs of the classes must rise from square to tapered");
            }
        }
    }

    /** The class of an arch with this form index ((Dc/Dm)/(Wc/Wm)); every limit belongs to the class it bounds. */
    public static ArchForm of(double index, CutOffs cutOffs) {
        if (!(index > 0)) {
            throw new IllegalArgumentException("a form index is a positive number, not " + index);
        }
        if (index <= cutOffs.squareTo()) {
            return SQUARE;
        }
        if (index < cutOffs.ovoidFrom()) {
            return BETWEEN_SQUARE_AND_OVOID;
        }
        if (index <= cutOffs.ovoidTo()) {
            return OVOID;
        }
        return index < cutOffs.taperedFrom() ? BETWEEN_OVOID_AND_TAPERED : TAPERED;
    }
}
