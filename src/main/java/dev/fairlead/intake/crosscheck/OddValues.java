package dev.fairlead.intake.crosscheck;

import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Measured;
import dev.fairlead.model.StrayLandmark;
import dev.fairlead.model.Tooth;
import java.util.HashSet;
import java.util.Set;

/** Values that each could be true, but not beside what else the case says. */
final class OddValues {
    /**
     * Drawn steel wire is reported from 154 to 200 GPa (Goldberg 1977; handbook values); a tenth is left on both sides.
     */
    private static final double STEEL_LOW = 140;

    private static final double STEEL_HIGH = 220;

    private OddValues() {}

    static void check(Case c, CrossChecks to) {
        Measured modulus = c.wire().modulus();
        boolean steel = c.wire().material().is(Material.STAINLESS_STEEL)
                || c.wire().material().is(Material.NICKEL_FREE_STEEL);
        if (steel && modulus.known() && (modulus.value() < STEEL_LOW || modulus.value() > STEEL_HIGH)) {
            to.doubt(
                    "/wire/modulus",
                    "the modulus of a steel wire, reported from 154 to 200 GPa",
                    Slips.number(modulus.value()) + " GPa",
                    "another material",
                    "look at the label; the force goes with it one for one");
        }
        for (StrayLandmark s : StrayLandmark.among(c.landmarks())) {
            to.doubt(
                    "/landmarks/" + s.index(),
                    "a point no farther from that of tooth "
                            + s.beside().tooth().get() + " than teeth are wide",
                    Slips.number(Math.round(10 * s.distance()) / 10.0) + " mm from it",
                    "a digit, a sign or the number of the tooth",
                    "look at the point again; until then the landmarks are not used");
        }
        Set<Tooth> images = new HashSet<>();
        for (int i = 0; i < c.images().size(); i++) {
            var tooth = c.images().get(i).tooth();
            if (tooth.known() && tooth.equals(c.images().get(i).reference())) {
                to.doubt(
                        "/images/" + i + "/reference",
                        "another tooth than the one whose image is to be corrected",
                        tooth.get() + " for itself",
                        "an entry that was copied and not changed",
                        "write a tooth on the same film whose true width is in the case");
            }
            if (tooth.known() && !images.add(tooth.get())) {
                to.doubt(
                        "/images/" + i + "/tooth",
                        "each tooth once; the first image that can be used counts",
                        tooth.get() + " again",
                        "an entry that was copied and not changed",
                        "write the tooth that this image shows");
            }
        }
    }
}
