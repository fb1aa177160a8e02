package dev.fairlead.measure.archform;

/** Class and size of an arch together: form index and its class, width, depth and length, mm. */
public record ArchShape(ArchForm form, double index, double width, double depth, double perimeter) {

    /** Shape of a curve whose canines lie this far along it from the midline, mm. */
    public static ArchShape of(ArchCurve curve, double canineArc, ArchForm.CutOffs cutOffs) {
        double index = ArchDimensions.of(curve, canineArc).formIndex();
        return new ArchShape(ArchForm.of(index, cutOffs), index, curve.width(), curve.depth(), curve.perimeter());
    }

    /** For example "ovoid, 44.0 mm wide, 24.0 mm deep, 69.3 mm along". */
    public String words() {
        return form.words() + ", " + Lengths.mm(width) + " wide, " + Lengths.mm(depth) + " deep, "
                + Lengths.mm(perimeter) + " along";
    }
}
