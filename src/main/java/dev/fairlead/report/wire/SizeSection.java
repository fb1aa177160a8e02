package dev.fairlead.report.wire;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.answer.ForceBand;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import java.util.List;
import java.util.function.Function;

/** The same plan with wires of other sizes, in one table. */
final class SizeSection {
    private SizeSection() {}

    /** One line for each diameter, mm; {@code forces} works one case out. */
    static Section of(Case c, List<Double> sizes, Function<Case, WireForces> forces) {
        Section.Draft t = new Section.Draft(
                "sizes",
                "The same plan with other sizes of wire",
                List.of("total, gf", "1 mm on, gf", "peak, MPa", "blank, mm"));
        for (double d : sizes) {
            Case other = Edit.set(c, "/wire/size", d);
            WireForces f = forces.apply(other);
            Measured blank = WireGeometry.of(other).blank();
            Cell length = blank.known()
                    ? new Cell(Numbers.plain(blank.value(), 1), blank, java.util.OptionalDouble.empty())
                    : Cell.of(blank);
            String id = "d" + Numbers.plain(d, 3);
            if (f.band().isEmpty()) {
                Cell none = f.missing().isEmpty() ? Cell.words("not assessed") : Cell.of(Measured.unknown(f.missing()));
                t.line(
                        id,
                        size(d),
                        List.of(none, Cell.words("-"), Cell.words("-"), length),
                        "mechanics-model",
                        "geometry");
                f.failures().stream().findFirst().ifPresent(why -> t.note(size(d) + " is not assessed: " + why + "."));
                continue;
            }
            ForceBand b = f.band().get();
            double most = b.held().peak().inner()
                    * f.modulus().orElseThrow().high()
                    / f.modulus().get().usual();
            t.line(
                    id,
                    size(d),
                    List.of(
                            bare(b.low(), b.high()),
                            b.hingedCurve().forwardAfter(1).isPresent()
                                            && b.heldCurve().forwardAfter(1).isPresent()
                                    ? bare(
                                            b.hingedCurve().forwardAfter(1).getAsDouble(),
                                            b.heldCurve().forwardAfter(1).getAsDouble())
                                    : Cell.words("-"),
                            new Cell(
                                    Numbers.plain(most, 0),
                                    Measured.exact(most, Unit.MPA),
                                    java.util.OptionalDouble.empty()),
                            length),
                    "mechanics-model",
                    "geometry");
        }
        return t.note(
                        "Total: least to most. 1 mm on, after so much movement: tail hinging to held. Peak: tail held, highest modulus. Beak, legs, stand-off, modulus and proof strength"
                                + " as in the case; force goes with the fourth power of the diameter, and a thinner wire makes a tighter bend on the same beak.")
                .done();
    }

    private static Cell bare(double a, double b) {
        Cell gf = Cell.range(Unit.NEWTON.to(Unit.GF, a), Unit.NEWTON.to(Unit.GF, b), Unit.GF);
        return new Cell(gf.text().replace(" gf", ""), gf.value(), gf.to());
    }

    /** A diameter as people know it: 0.508 mm (0.020 in). */
    static String size(double mm) {
        return Numbers.plain(mm, 3) + " mm (" + Numbers.plain(Unit.MM.to(Unit.INCH, mm), 3) + " in)";
    }
}
