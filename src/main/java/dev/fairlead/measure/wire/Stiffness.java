package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Choices.Section;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;

/**
 * Bending stiffness E I of a round wire against round stainless steel of the planned diameter: (E / E0) (d / planned
 * d)^4.
 */
public final class Stiffness {
    /**
     * Modulus of the reference wire, GPa: upper end of drawn steel wire, 160-180 (Brantley & Eliades 2001, from
     * memory).
     */
    public static final double REFERENCE_MODULUS = 180;

    private Stiffness() {}

    /**
     * The ratio; does not apply to a section that is not round. While the section is not known it is that of a round
     * wire: another section is a fault whatever its stiffness.
     */
    public static Measured ratio(WirePlan w, Workbook book) {
        if (w.section().isOther(Section.ROUND) || !w.section().applies()) {
            return Measured.notApplicable();
        }
        Measured size = w.size().ratioTo(w.plannedSize(), 1, Unit.RATIO);
        Measured section =
                size.known() ? size.chain(Math.pow(size.value(), 4), 4 * Math.pow(size.value(), 3), Unit.RATIO) : size;
        Measured ratio = times(section, modulus(w));
        book.add(() -> Working.of(
                "wire.stiffness-ratio",
                "Wire",
                "bending stiffness against the planned wire in steel",
                ratio,
                "(E / 180 GPa) (d / planned d)^4",
                (w.modulus().known() ? "(" + Say.num(w.modulus()) + " / 180)" : "1") + " (" + Say.num(w.size()) + " / "
                        + Say.num(w.plannedSize()) + ")^4",
                w.modulus().known()
                        ? ""
                        : "Steel of undeclared modulus is taken to be as stiff as the reference steel.",
                "geometry",
                "brantley-eliades-2001"));
        return ratio;
    }

    /** E over the reference: as declared; 1 for steel of undeclared modulus; unknown for other materials. */
    private static Measured modulus(WirePlan w) {
        if (w.modulus().known()) {
            return w.modulus().chain(w.modulus().value() / REFERENCE_MODULUS, 1 / REFERENCE_MODULUS, Unit.RATIO);
        }
        boolean steel =
                w.material().is(Material.STAINLESS_STEEL) || w.material().is(Material.NICKEL_FREE_STEEL);
        if (steel) {
            return Measured.exact(1, Unit.RATIO);
        }
        return w.material().known()
                ? Measured.unknown("/wire/modulus")
                : Measured.unknown(w.material().missing());
    }

    private static Measured times(Measured a, Measured b) {
        if (!a.known() || !b.known()) {
            return a.plus(b);
        }
        return a.times(b.value()).plus(b.chain(0, a.value(), Unit.RATIO));
    }
}
