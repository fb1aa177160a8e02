package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.answer.BandInput;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Choices.Temper;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Modulus of elasticity of a wire as far as it is known, MPa: as declared, else the range of drawn stainless steel.
 *
 * @param declared the maker declares it, so low and high are one
 */
public record Elastic(double low, double usual, double high, boolean declared) {
    /** Least 0.2 % proof strength of steel arch wire by temper, MPa: lower ends of textbook ranges, from memory. */
    private static final Map<Temper, Double> PROOF = Map.of(Temper.HARD, 1400.0, Temper.EXTRA_HARD, 1700.0);

    /** The modulus; empty, see {@link #missing}, when nothing allows to say it. */
    static Optional<Elastic> of(WirePlan w) {
        if (w.material().is(Material.NICKEL_TITANIUM)) {
            return Optional.empty();
        }
        if (w.modulus().known() && w.material().known()) {
            double e = w.modulus().unit().to(Unit.MPA, w.modulus().value());
            return Optional.of(new Elastic(e, e, e, true));
        }
        return steel(w)
                ? Optional.of(new Elastic(
                        BandInput.STEEL_E_LOW,
                        Unit.GPA.to(Unit.MPA, Stiffness.REFERENCE_MODULUS),
                        BandInput.STEEL_E_HIGH,
                        false))
                : Optional.empty();
    }

    /** What would make the modulus known; a superelastic wire has none, so for it only another material would. */
    static List<String> missing(WirePlan w) {
        if (w.material().is(Material.NICKEL_TITANIUM) || !w.material().applies()) {
            return List.of("/wire/material");
        }
        return w.material().known() ? List.of("/wire/modulus") : w.material().missing();
    }

    /**
     * Proof strength, MPa: as declared; where the maker declares none, for hard steel the least that its temper has. A
     * soft wire yields at anything from 200 MPa upwards: without a declaration nothing is said of it.
     */
    public static Measured proof(WirePlan w) {
        Measured declared = w.proofStrength();
        if (declared.applies()) {
            return declared;
        }
        if (steel(w) && w.temper().known() && PROOF.containsKey(w.temper().get())) {
            return Measured.exact(PROOF.get(w.temper().get()), Unit.MPA);
        }
        return Measured.unknown(List.of("/wire/proofStrength"));
    }

    private static boolean steel(WirePlan w) {
        return w.material().is(Material.STAINLESS_STEEL) || w.material().is(Material.NICKEL_FREE_STEEL);
    }
}
