package dev.fairlead.measure.archform;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Class and size of an arch or of a preformed wire together: form index and its class, width, depth and length, mm. */
public record ArchShape(ArchForm form, double index, double width, double depth, double perimeter) {

    /** Shape of a curve whose canines lie this far along it from the midline, mm. */
    public static ArchShape of(ArchCurve curve, double canineArc, ArchForm.CutOffs cutOffs) {
        double index = ArchDimensions.of(curve, canineArc).formIndex();
        return new ArchShape(ArchForm.of(index, cutOffs), index, curve.width(), curve.depth(), curve.perimeter());
    }

    /** Names of preformed wires, the one that needs least reshaping first: by RMS misfit, then by name. */
    public static List<String> ranked(ArchCurve arch, ArchPlaces places, Map<String, ArchCurve> preforms) {
        record Ranked(String name, double rms) {}
        return preforms.entrySet().stream()
                .map(e -> new Ranked(
                        e.getKey(), WireMisfit.of(arch, e.getValue(), places).rms()))
                .sorted(Comparator.comparingDouble(Ranked::rms).thenComparing(Ranked::name))
                .map(Ranked::name)
                .toList();
    }

    /** For example "ovoid, 44.0 mm wide, 24.0 mm deep, 69.3 mm along". */
    public String words() {
        return form.words() + ", " + Lengths.mm(width) + " wide, " + Lengths.mm(depth) + " deep, "
                + Lengths.mm(perimeter) + " along";
    }
}
