package dev.fairlead.report.wire;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.schedule.Forecast;
import dev.fairlead.measure.schedule.Route;
import dev.fairlead.measure.space.SpaceAnalysis;
import dev.fairlead.measure.wire.StandOffCurve;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.report.picture.CustomaryForce;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The same plan with wires of other sizes, in one table. */
final class SizeSection {
    private static final String[] BY = {"mechanics-model", "geometry"};
    private static final Cell NONE = Cell.words("-");

    private final Case c;
    private final Measured right;
    private final Measured left;
    private final CustomaryForce customary;

    /** At these stand-offs. */
    SizeSection(Case c, Measured right, Measured left, CustomaryForce customary) {
        this.c = c;
        this.right = right;
        this.left = left;
        this.customary = customary;
    }

    /** One line for each diameter, mm. */
    Section of(List<Double> sizes) {
        Section.Draft t = new Section.Draft(
                "sizes",
                "The same plan with other sizes of wire",
                List.of("total, gf", "peak, MPa", "fits at, mm", "visits", "blank, mm"));
        sizes.forEach(d -> line(t, d, Edit.set(c, "/wire/size", d)));
        return t.note(
                        "Total: least to most at the stand-off named above. Peak: tail held, highest modulus. Fits at: stand-off"
                                + " at which the middle of the band is " + customary.words()
                                + ", both sides in that proportion. Visits: expected activations for the plan at the larger of"
                                + " these stand-offs, the planned one at most.")
                .note(
                        "Beak, legs, modulus and proof strength as in the case; force goes with about the fourth power of the"
                                + " diameter, and a thinner wire makes a tighter bend on the same beak.")
                .done();
    }

    private void line(Section.Draft t, double d, Case other) {
        Measured blank = WireGeometry.of(other).blank();
        Cell length =
                blank.known() ? new Cell(Numbers.plain(blank.value(), 1), blank, Optional.empty()) : Cell.of(blank);
        String id = "d" + Numbers.plain(d, 3);
        Optional<StandOffCurve> curve = StandOffCurve.of(other, right, left);
        if (curve.isEmpty()) {
            List<String> missing = WireForces.of(other, right, left).missing();
            Cell none = missing.isEmpty() ? Cell.words("not assessed") : Cell.of(Measured.unknown(missing));
            t.line(id, name(d), List.of(none, NONE, NONE, NONE, length), BY);
            return;
        }
        StandOffCurve.Point at = curve.get().asked();
        t.line(
                id,
                name(d),
                List.of(
                        bare(at.low(), at.high()),
                        new Cell(
                                Numbers.plain(at.stress(), 0), Measured.exact(at.stress(), Unit.MPA), Optional.empty()),
                        fits(
                                curve.get(),
                                curve.get().standOffFor(customary.least()),
                                curve.get().standOffFor(customary.most())),
                        visits(other, curve.get().standOffFor(customary.most())),
                        length),
                BY);
    }

    private static Cell fits(StandOffCurve curve, OptionalDouble least, OptionalDouble most) {
        if (least.isEmpty()) {
            return Cell.words("over " + Numbers.plain(curve.searchedTo(), 1));
        }
        Measured from = Measured.exact(least.getAsDouble(), Unit.MM);
        return most.isEmpty()
                ? new Cell("from " + Numbers.plain(from.value(), 1), from, Optional.empty())
                : new Cell(
                        Numbers.plain(from.value(), 1) + " to " + Numbers.plain(most.getAsDouble(), 1),
                        from,
                        Optional.of(Measured.exact(most.getAsDouble(), Unit.MM)));
    }

    /** Activations that the plan still takes where no side is opened farther than the customary band allows. */
    private Cell visits(Case other, OptionalDouble most) {
        double share = Math.min(1, most.orElse(Double.MAX_VALUE) / Math.max(right.value(), left.value()));
        Case at = Edit.set(
                Edit.set(other, "/plan/standOffRight", share * right.value()),
                "/plan/standOffLeft",
                share * left.value());
        return Forecast.now(at, SpaceAnalysis.of(new Readings(at), false), Clinic.PUBLISHED)
                .map(Route::activations)
                .map(v -> new Cell(
                        String.valueOf(v.expected()), Measured.exact(v.expected(), Unit.COUNT), Optional.empty()))
                .orElse(NONE);
    }

    private static Cell bare(double a, double b) {
        Cell gf = Cell.range(a, b, Unit.GF);
        return new Cell(gf.text().replace(" gf", ""), gf.value(), gf.to());
    }

    /** A diameter in inches where it is one that wires come in, else in mm. */
    private static String name(double mm) {
        double inch = Math.rint(Unit.MM.to(Unit.INCH, mm) * 1000) / 1000;
        return Math.abs(Unit.INCH.to(Unit.MM, inch) - mm) < 0.001
                ? Numbers.plain(inch, 3) + " in"
                : Numbers.plain(mm, 3) + " mm";
    }

    /** A diameter as people know it: 0.508 mm (0.020 in). */
    static String size(double mm) {
        return Numbers.plain(mm, 3) + " mm (" + Numbers.plain(Unit.MM.to(Unit.INCH, mm), 3) + " in)";
    }
}
