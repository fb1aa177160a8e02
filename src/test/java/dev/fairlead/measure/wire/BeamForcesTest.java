package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.VisitSeen;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.Knowns;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Worked;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Forces of whole cases by the beam model, against the figures of a separate reference model. */
class BeamForcesTest {
    private static final double N = 1 / 0.00980665;

    private static Worked work(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.kept(), Calculations.full());
    }

    private static VisitSeen first(CaseBuilder b) {
        return work(b).facts().stream()
                .filter(VisitSeen.class::isInstance)
                .map(VisitSeen.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void bandOfTheReferenceWire() {
        // reference model at 1.5 mm, E 180: 2.41 N hinged, 3.76 N held; laterals alone held 3.17 N; stress 772 MPa held
        VisitSeen v = first(BaseCase.of().set("/wire/modulus", 180));
        assertThat(v.forceLow().value()).isLessThan(2.41 * N).isGreaterThan(0.8 * 2.41 * N);
        assertThat(v.forceHigh().value()).isGreaterThan(3.76 * N * 0.99).isLessThan(1.1 * 3.76 * N);
        // it is highest in a straight leg, where no curvature adds to it
        assertThat(v.peakStress().value()).isCloseTo(772, within(8.0));
        assertThat(v.overProof().value()).isCloseTo(772 - 1500, within(8.0));
        // what was measured is in its error; a gauge reading plays no part in the model
        assertThat(v.forceLow().sources())
                .contains("/visits/0/left/standOff", "/bench/right/bendRadius")
                .doesNotContain("/visits/0/gauge");
    }

    @Test
    void undeclaredModulusWidensTheBand() {
        // force goes exactly with the modulus; drawn steel 154 to 200 GPa (Goldberg et al. 1977 and handbooks)
        VisitSeen declared = first(BaseCase.of().set("/wire/modulus", 180));
        VisitSeen open = first(BaseCase.of());
        assertThat(open.forceLow().value()).isCloseTo(declared.forceLow().value() * 154 / 180, within(1e-9));
        assertThat(open.forceHigh().value()).isCloseTo(declared.forceHigh().value() * 200 / 180, within(1e-9));
        assertThat(open.peakStress().value()).isCloseTo(declared.peakStress().value() * 200 / 180, within(1e-9));
    }

    @Test
    void aGaugeReadingOverridesTheModel() {
        VisitSeen v = first(BaseCase.of().set("/visits/0/gauge", 123));
        assertThat(v.forceLow().value()).isEqualTo(123);
        assertThat(v.forceHigh().value()).isEqualTo(123);
        assertThat(v.peakStress().known()).isTrue();
    }

    @Test
    void verticalForceOnlyWithMeasuredHeights() {
        // reference model at 1.5 mm: tubes 2 mm above the brackets: 0.14 N up held, 0.34 N down hinged; at 5.5 mm 0.48
        // and 0.74 N down
        CaseBuilder b = BaseCase.of().set("/wire/modulus", 180);
        b.set("/hardware/left/aboveBrackets", 2).set("/hardware/right/aboveBrackets", 2);
        assertThat(first(b).intrusivePerIncisor().value()).isCloseTo(0.34 * N / 4, within(0.4));
        b.set("/hardware/left/aboveBrackets", 5.54).set("/hardware/right/aboveBrackets", 5.54);
        assertThat(first(b).intrusivePerIncisor().value()).isCloseTo(0.74 * N / 4, within(0.4));
        VisitSeen without = first(b.without("/hardware/left/aboveBrackets"));
        assertThat(without.intrusivePerIncisor().missing()).containsExactly("/hardware/left/aboveBrackets");
        assertThat(without.forceLow().known()).isTrue();
    }

    @Test
    void aPassiveWireHasNoForce() {
        VisitSeen v = first(BaseCase.of().set("/visits/0/left/standOff", 0).set("/visits/0/right/standOff", 0));
        assertThat(v.forceHigh().value()).isZero();
        assertThat(v.peakStress().value()).isZero();
    }

    @Test
    void mirroredCasesHaveTheSameForce() {
        VisitSeen left = first(BaseCase.of().set("/visits/0/left/standOff", 2).set("/visits/0/right/standOff", 1));
        VisitSeen right = first(BaseCase.of().set("/visits/0/left/standOff", 1).set("/visits/0/right/standOff", 2));
        assertThat(left.forceLow().value()).isCloseTo(right.forceLow().value(), within(1e-3));
        assertThat(left.peakStress().value()).isCloseTo(right.peakStress().value(), within(1e-2));
    }

    @Test
    void aStandOffThatCannotBeIsNotANumber() {
        CaseBuilder b = BaseCase.of().set("/visits/0/left/standOff", 8).set("/visits/0/right/standOff", 8);
        VisitSeen v = first(b);
        assertThat(v.forceLow().missing())
                .containsExactly("/visits/0/gauge", "/visits/0/equilibriumOfTheWireInTheBeamModel");
        assertThat(v.peakStress().known()).isFalse();
        assertThat(work(b).workings())
                .anyMatch(
                        w -> w.id().equals("wire.force.1.stress") && w.note().contains("cannot be opened far enough"));
    }

    @Test
    void whatIsMissingIsNamed() {
        VisitSeen v = first(BaseCase.of().without("/bench/left/bendRadius").without("/visits/0/gauge"));
        assertThat(v.forceLow().missing()).containsExactly("/visits/0/gauge", "/bench/left/bendRadius");
        assertThat(v.peakStress().missing()).containsExactly("/bench/left/bendRadius");
        assertThat(first(BaseCase.of().set("/wire/material", "nickel-titanium").set("/wire/modulus", 40))
                        .peakStress()
                        .missing())
                .containsExactly("/wire/material");
        assertThat(first(BaseCase.of().set("/wire/section", "rectangular"))
                        .peakStress()
                        .missing())
                .containsExactly("/wire/section");
    }

    @Test
    void proofStrengthByTemperWhereNoneIsDeclared() {
        VisitSeen declared = first(BaseCase.of());
        CaseBuilder none = BaseCase.of().set("/wire/proofStrength", CaseBuilder.NOT_APPLICABLE);
        assertThat(first(none).overProof().value())
                .isCloseTo(declared.overProof().value() + 150, within(1e-9));
        // soft wire may yield anywhere from 200 to 1100 MPa, so its temper tells nothing
        assertThat(first(none.copy().set("/wire/temper", "soft")).overProof().missing())
                .containsExactly("/wire/proofStrength");
        assertThat(first(none.without("/wire/temper")).overProof().missing()).containsExactly("/wire/proofStrength");
        assertThat(first(BaseCase.of().without("/wire/proofStrength"))
                        .overProof()
                        .missing())
                .containsExactly("/wire/proofStrength");
    }

    /** Takes each fact away in turn: nothing that was unknown becomes known by it. */
    @Test
    void forgettingAFactTeachesNothing() {
        for (CaseBuilder b :
                List.of(BaseCase.of(), BaseCase.of().without("/wire/material").set("/wire/modulus", 180))) {
            Map<String, Boolean> before = known(b);
            for (String pointer : b.values().keySet()) {
                if (!pointer.matches("/(arch|wire|bench|hardware|visits|plan)/.*")) {
                    continue;
                }
                known(b.copy().without(pointer))
                        .forEach((what, known) -> assertThat(!known || before.getOrDefault(what, true))
                                .as(what + " without " + pointer)
                                .isTrue());
            }
        }
    }

    private static Map<String, Boolean> known(CaseBuilder b) {
        Map<String, Boolean> all = new LinkedHashMap<>();
        for (CaseFact f : Measures.of(b.build(), Optional.empty(), Workbook.none(), Calculations.full())
                .facts()) {
            for (Map.Entry<String, CaseValue> e : Knowns.of(f).entrySet()) {
                all.put(
                        f.getClass().getSimpleName() + " " + f.place().pointer() + " "
                                + f.place().words() + " " + e.getKey(),
                        e.getValue().known());
            }
        }
        return all;
    }

    private static Working working(CaseBuilder b, String id) {
        return work(b).workings().stream()
                .filter(w -> w.id().equals("wire.force." + id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void workingsTellWireAndStandOffsAndTheShareOfAnIncisor() {
        CaseBuilder b = BaseCase.of().set("/wire/modulus", 180).set("/visits/0/left/standOff", 1.2);
        Working low = working(b, "1.low");
        assertThat(low.title()).isEqualTo("total labial force, low end, visit 1");
        assertThat(low.substituted()).isEqualTo("stand-off 1.5 right, 1.2 left; wire 0.508 mm, E 180 GPa as declared");
        assertThat(low.note())
                .startsWith("A quarter of it, the mean per incisor, is "
                        + Math.round(low.value().value() / 4) + " gf.")
                .contains("No bench test stands behind the model")
                .endsWith("A gauge reading at tie-in overrides it.");
        Working high = working(b, "1.high");
        assertThat(high.note())
                .isEqualTo("A quarter of it, the mean per incisor, is "
                        + Math.round(high.value().value() / 4) + " gf. ");
        assertThat(working(BaseCase.of(), "2.stress").substituted()).endsWith("E 154 to 200 GPa, none being declared");
        assertThat(working(BaseCase.of(), "2.stress").title()).isEqualTo("peak bending stress, visit 2");
    }

    @Test
    void aWorkingWithoutANumberSaysWhyAndSharesNothing() {
        CaseBuilder b = BaseCase.of().set("/visits/0/left/standOff", 8).set("/visits/0/right/standOff", 8);
        Working low = working(b, "1.low");
        assertThat(low.note())
                .startsWith("Not assessed: a fold of this size cannot be opened far enough for the stand-off. No bench")
                .doesNotContain("A quarter of it");
        assertThat(working(b, "1.intrusive").note())
                .startsWith("Not assessed: ")
                .endsWith("not even the sign is known.");
        assertThat(working(BaseCase.of(), "1.intrusive").note()).startsWith("Negative: it extrudes.");
        assertThat(first(b).intrusivePerIncisor().missing()).contains("/visits/0/equilibriumOfTheWireInTheBeamModel");
    }

    @Test
    void heightsThatNobodyMeasuresLeaveTheVerticalForceOut() {
        for (String side : new String[] {"left", "right"}) {
            CaseBuilder b = BaseCase.of().set("/hardware/" + side + "/aboveBrackets", CaseBuilder.NOT_APPLICABLE);
            assertThat(first(b).intrusivePerIncisor().applies()).as(side).isFalse();
            assertThat(first(b.without("/bench/left/length"))
                            .intrusivePerIncisor()
                            .known())
                    .isFalse();
        }
    }

    /** Brackets of two neighbours lie a millimetre apart at least: nearer ones were read or written wrongly. */
    @Test
    void bracketsThatLieUponEachOtherAreAskedForAgain() {
        CaseBuilder b = BaseCase.of()
                .set("/hardware/brackets/41/fromMidline", 2.5)
                .set("/hardware/brackets/31/fromMidline", 2.5)
                .set("/hardware/brackets/42/fromMidline", 3.25)
                .set("/hardware/brackets/32/fromMidline", 3.5);
        assertThat(first(b).peakStress().missing())
                .containsExactlyInAnyOrder(
                        "/hardware/brackets/42/fromMidline",
                        "/hardware/brackets/41/fromMidline",
                        "/hardware/brackets/31/fromMidline",
                        "/hardware/brackets/32/fromMidline");
        BeamInputs apart = new BeamInputs(
                b.set("/hardware/brackets/42/fromMidline", 3.5).build(),
                Measured.exact(1.5, Unit.MM),
                Measured.exact(1.5, Unit.MM));
        assertThat(apart.missing()).as("just a millimetre").isEmpty();
    }

    /** Reference model: one side opened has 61 to 62 % of the force of both. */
    @Test
    void aWireOpenedOnOneSideHasMostOfTheForce() {
        double both = first(BaseCase.of()).forceHigh().value();
        for (String side : new String[] {"left", "right"}) {
            VisitSeen v = first(BaseCase.of().set("/visits/0/" + side + "/standOff", 0));
            assertThat(v.forceHigh().value() / both).as(side).isBetween(0.55, 0.7);
        }
    }

    /**
     * Force goes exactly with the modulus, 154 to 200 GPa where none is declared: what pulls down is worst with the
     * stiffest wire, what pushes up mildest with the softest; either tube condition may be the worse one.
     */
    @Test
    void theVerticalForceIsTheWorstThatMayBe() {
        for (double height : new double[] {-3, 2, 5.5, 10}) {
            CaseBuilder open = BaseCase.of()
                    .set("/plan/standOff", 1.5)
                    .set("/hardware/left/aboveBrackets", height)
                    .set("/hardware/right/aboveBrackets", height);
            CaseBuilder declared = open.copy().set("/wire/modulus", 180);
            WireForces.Vertical v =
                    WireForces.planned(declared.build()).vertical().orElseThrow();
            double least = v.least() * (v.least() < 0 ? 200 : 154) / 180;
            double most = v.most() * (v.most() < 0 ? 154 : 200) / 180;
            WireForces.Vertical w = WireForces.planned(open.build()).vertical().orElseThrow();
            assertThat(w.least()).as("at " + height).isCloseTo(least, within(1e-9));
            assertThat(w.most()).as("at " + height).isCloseTo(most, within(1e-9));
            assertThat(first(open).intrusivePerIncisor().value())
                    .as("at " + height)
                    .isCloseTo(-least * N / 4, within(1e-6));
        }
    }

    @Test
    void workingOutAheadChangesNothing() {
        BeamForces model = new BeamForces();
        Case planned = BaseCase.of().drop("/visits").set("/plan/standOff", 1.5).build();
        model.ahead(planned);
        assertThat(model.planned(planned).high().value())
                .isCloseTo(first(BaseCase.of()).forceHigh().value(), within(1e-9));
        Case c = BaseCase.of().build();
        model.ahead(c);
        assertThat(model.at(c, 2, Workbook.none()).high().value())
                .isCloseTo(first(BaseCase.of()).forceHigh().value(), within(1e-9));
    }
}
