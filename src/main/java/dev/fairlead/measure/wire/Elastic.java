package dev.fairlead.measure.wire;

import dev.fairlead.measure.mechanics.answer.BandInput;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Choices.Temper;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
import java.util.List;
import java.util.Optional;

/**
 * Modulus of elasticity of a wire as far as it is known, MPa: as declared, else the range of drawn stainless steel.
 *
 * @param declared the maker declares it, so low and high are one
 */
public record Elastic(double low, double usual, double high, boolean declared) {
    /**
     * Least 0.2 % proof strength of spring-tempered steel wire, MPa: 65 % of the least tensile strength of 302/304 wire
     * of 0.020 in (2068 MPa, ASTM A313), share from memory. Trade names of tempers do not order strengths (Pelsue
     * 2009), so the harder grade is not taken to bear more; soft wire may yield at 200 to 300 MPa or at 1100, so it has
     * none.
     */
    private static final double SPRING_PROOF = 1350;

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
     * Proof strength, MPa: as declared; where the maker declares none, for hard steel the least that spring temper has;
     * unknown for soft wire.
     */
    public static Measured proof(WirePlan w) {
        Measured declared = w.proofStrength();
        if (declared.applies()) {
            return declared;
        }
        if (steel(w) && (w.temper().is(Temper.HARD) || w.temper().is(Temper.EXTRA_HARD))) {
            return Measured.exact(SPRING_PROOF, Unit.MPA);
        }
        return Measured.unknown(List.of("/wire/proofStrength"));
    }

    private static boolean steel(WirePlan w) {
        return w.material().is(Material.STAINLESS_STEEL) || w.material().is(Material.NICKEL_FREE_STEEL);
    }
}
