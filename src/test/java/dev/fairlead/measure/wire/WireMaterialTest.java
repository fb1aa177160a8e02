package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
import dev.fairlead.model.shape.Edit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a wire's material tells of its stiffness and strength, and what only its maker can. */
class WireMaterialTest {
    private static CaseBuilder wire(String material) {
        return new CaseBuilder()
                .set("/wire/section", "round")
                .set("/wire/material", material)
                .set("/wire/size", 0.508)
                .set("/wire/plannedSize", 0.508);
    }

    private static Optional<Elastic> modulus(CaseBuilder b) {
        return Elastic.of(b.build().wire());
    }

    private static List<String> missing(CaseBuilder b) {
        return Elastic.missing(b.build().wire());
    }

    /** Drawn steel 154 to 200 GPa (Goldberg et al. 1977 and handbooks), usually 180. */
    @ParameterizedTest
    @ValueSource(strings = {"stainless-steel", "nickel-free-steel"})
    void steelHasTheRangeOfDrawnWireUnlessItsMakerDeclaresAModulus(String steel) {
        assertThat(modulus(wire(steel))).contains(new Elastic(154_000, 180_000, 200_000, false));
        assertThat(modulus(wire(steel).set("/wire/modulus", 172)))
                .contains(new Elastic(172_000, 172_000, 172_000, true));
    }

    @Test
    void otherMaterialsHaveNoModulusUntilItIsDeclared() {
        assertThat(modulus(wire("beta-titanium"))).isEmpty();
        assertThat(missing(wire("beta-titanium"))).containsExactly("/wire/modulus");
        assertThat(modulus(wire("beta-titanium").set("/wire/modulus", 72)))
                .contains(new Elastic(72_000, 72_000, 72_000, true));
        CaseBuilder unknown = wire("stainless-steel").without("/wire/material").set("/wire/modulus", 180);
        assertThat(modulus(unknown)).as("a number beside no material").isEmpty();
        assertThat(missing(unknown)).containsExactly("/wire/material");
    }

    @Test
    void aSuperelasticWireHasNoModulusWhateverIsDeclared() {
        assertThat(modulus(wire("nickel-titanium").set("/wire/modulus", 40))).isEmpty();
        assertThat(missing(wire("nickel-titanium"))).containsExactly("/wire/material");
    }

    private static Measured proof(CaseBuilder b) {
        return Elastic.proof(b.build().wire());
    }

    /** 65 % of 2068 MPa, the least tensile strength of 302/304 spring wire of 0.020 in by ASTM A313, to 1 %. */
    @ParameterizedTest
    @ValueSource(strings = {"hard", "extra-hard"})
    void hardSteelOfUndeclaredStrengthHasTheLeastOfSpringTemper(String temper) {
        CaseBuilder b = wire("stainless-steel")
                .set("/wire/proofStrength", CaseBuilder.NOT_APPLICABLE)
                .set("/wire/temper", temper);
        assertThat(proof(b).value()).isCloseTo(0.65 * 2068, within(14.0));
        assertThat(proof(b.copy().set("/wire/material", "beta-titanium")).missing())
                .containsExactly("/wire/proofStrength");
        assertThat(proof(b.copy().set("/wire/temper", "soft")).missing()).containsExactly("/wire/proofStrength");
        assertThat(proof(b.copy().set("/wire/proofStrength", 1600)).value()).isEqualTo(1600);
        assertThat(proof(b.copy().without("/wire/proofStrength")).missing()).containsExactly("/wire/proofStrength");
    }

    private static Measured ratio(CaseBuilder b) {
        return Stiffness.ratio(b.build().wire(), Workbook.none());
    }

    /** GUM 5.1.6: in a product of powers relative errors count times the power, 4 for the diameter. */
    @Test
    void errorsOfTheStiffnessGoWithThePowers() {
        Case c = wire("stainless-steel").set("/wire/modulus", 90).build();
        c = Edit.set(c, "/wire/size", Measured.of(0.45, Unit.MM, "/wire/size", 0.01));
        WirePlan w = Edit.set(c, "/wire/modulus", Measured.of(90, Unit.GPA, "/wire/modulus", 5))
                .wire();
        Measured r = Stiffness.ratio(w, Workbook.none());
        assertThat(r.value()).isCloseTo(0.5 * Math.pow(0.45 / 0.508, 4), within(1e-12));
        assertThat(r.part("/wire/size")).isCloseTo(4 * 0.01 / 0.45 * r.value(), within(1e-12));
        assertThat(r.part("/wire/modulus")).isCloseTo(5.0 / 90 * r.value(), within(1e-12));
    }

    @Test
    void steelOfUndeclaredModulusIsTakenAsStiffAsTheReference() {
        assertThat(ratio(wire("nickel-free-steel")).value()).isEqualTo(1);
        assertThat(ratio(wire("stainless-steel").without("/wire/material")).missing())
                .containsExactly("/wire/material");
        assertThat(ratio(wire("stainless-steel").without("/wire/section")).value())
                .as("another section is a fault of its own")
                .isEqualTo(1);
        assertThat(ratio(wire("stainless-steel")
                                .without("/wire/size")
                                .without("/wire/material")
                                .without("/wire/plannedSize"))
                        .missing())
                .containsExactlyInAnyOrder("/wire/size", "/wire/material", "/wire/plannedSize");
        assertThat(ratio(wire("stainless-steel").without("/wire/size")).missing())
                .containsExactly("/wire/size");
    }

    @Test
    void theWorkingSaysWhereTheModulusIsFrom() {
        Working declared = working(wire("beta-titanium").set("/wire/modulus", 72));
        assertThat(declared.substituted()).isEqualTo("(72 / 180) (0.508 / 0.508)^4");
        assertThat(declared.note()).isEmpty();
        Working taken = working(wire("stainless-steel"));
        assertThat(taken.substituted()).isEqualTo("1 (0.508 / 0.508)^4");
        assertThat(taken.note())
                .isEqualTo("Steel of undeclared modulus is taken to be as stiff as the reference steel.");
    }

    private static Working working(CaseBuilder b) {
        Workbook book = Workbook.kept();
        Stiffness.ratio(b.build().wire(), book);
        assertThat(book.workings()).hasSize(1);
        return book.workings().get(0);
    }
}
