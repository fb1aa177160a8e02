package dev.fairlead.check.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.whatif.Difference.Kind;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.report.text.WhatIfText;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values that a person tries on a demo case: what changes and what is refused. */
class TypedChangesTest {
    private static final Checker CHECKER = new Checker(Rulebase.load(Path.of("rules")));
    private static final CheckOptions OPTIONS = CheckOptions.USUAL.with(Doubting.NONE);

    private static Difference of(String... sets) throws TypedChanges.Refused, IOException {
        Path file = Path.of("cases/whimbrel-06-class-iii-tendency.yaml");
        Case c = CaseReader.read(Files.readAllBytes(file), file.toString(), CaseFormat.BY_NAME)
                .value()
                .orElseThrow();
        return TypedChanges.difference(c, "0", List.of(sets), CHECKER, OPTIONS);
    }

    /** An overjet of 1.5 mm less 2.5 mm of advance is -1 mm; less 0.5 mm it is 1 mm, which is what is asked for. */
    @Test
    void numbersAndFindingsFollowByArithmetic() throws Exception {
        Difference d = of("plan.advanceLeft=0.5", "/plan/advanceRight=0,5 mm");
        assertThat(d.numbers())
                .filteredOn(n -> n.id().equals("position.overjet-after"))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.before().value()).isEqualTo(-1, within(1e-9));
                    assertThat(n.after().value()).isEqualTo(1, within(1e-9));
                });
        assertThat(d.findings())
                .filteredOn(f -> f.kind() == Kind.CLEARED)
                .extracting(f -> f.after().id())
                .contains("overjet-after");
        assertThat(d.sets()).allMatch(Difference.Given::planned);
        assertThat(d.numbers()).noneMatch(n -> n.id().equals("space.incisor-sum"));
    }

    @Test
    void aFactOfThePatientIsMarkedAsSuch() throws Exception {
        Difference d = of("headFilm.incisorMandibular=104");
        assertThat(d.sets()).noneMatch(Difference.Given::planned);
        assertThat(d.findings())
                .filteredOn(f -> f.kind() == Kind.GAINED)
                .extracting(f -> f.after().id())
                .contains("incisor-inclination-before");
        assertThat(WhatIfText.of(d))
                .containsPattern("not\\s+planned")
                .contains("gained")
                .satisfies(t -> assertThat(t.lines()).allMatch(l -> Wrap.columns(l) <= Wrap.WIDTH));
    }

    @Test
    void aFactMadeUnknownIsAChange() throws Exception {
        Difference d = of("bite.overjet=");
        assertThat(d.findings())
                .filteredOn(f -> f.after().id().equals("overjet-after"))
                .singleElement()
                .matches(f -> f.kind() == Kind.CHANGED);
        assertThat(d.numbers())
                .filteredOn(n -> n.id().equals("position.overjet-after"))
                .singleElement()
                .matches(n -> !n.after().known());
    }

    @Test
    void whatCannotBeTriedIsRefusedWithTheNearestName() {
        assertThatThrownBy(() -> of("plan.standof=2"))
                .isInstanceOf(TypedChanges.Refused.class)
                .hasMessageContaining("/plan/standOff?");
        assertThatThrownBy(() -> of("plans/standOff=2")).hasMessageContaining("/plan/standOff?");
        assertThatThrownBy(() -> of("plan=2")).hasMessageContaining("advanceLeft");
        assertThatThrownBy(() -> of("teeth.31.widht=5")).hasMessageContaining("/teeth/31/width?");
        assertThatThrownBy(() -> of("xyzzy=2")).hasMessageContaining("/xyzzy");
        assertThatThrownBy(() -> of("plan.standOff")).hasMessageContaining("path=value");
        assertThatThrownBy(() -> of("plan.standOff=far")).hasMessageContaining("0 to 6 mm");
        assertThatThrownBy(() -> of("plan.standOff=60")).hasMessageContaining("0 to 6 mm");
        assertThatThrownBy(() -> of("visits.9.left.gapOpened=1")).hasMessageContaining("/visits/9");
    }

    private static Case read(String name) throws IOException {
        Path file = Path.of("cases", name);
        return CaseReader.read(Files.readAllBytes(file), name, CaseFormat.BY_NAME)
                .value()
                .orElseThrow();
    }

    private static Difference of(Case c, String... sets) throws TypedChanges.Refused {
        return TypedChanges.difference(c, "0", List.of(sets), CHECKER, OPTIONS);
    }

    /** The search may take another wire until it goes in; from then on its size is a fact. */
    @Test
    void whatTheSearchMayChangeIsPlan() throws Exception {
        Case c = read("plover-21-wire-too-thick-for-slot.yaml");
        assertThat(of(c, "wire.size=0.457").sets()).allMatch(Difference.Given::planned);
        Case tiedIn = read("stilt-10-gauge-overrides.yaml");
        assertThat(of(tiedIn, "wire.size=0.457").sets()).noneMatch(Difference.Given::planned);
        assertThat(of(tiedIn, "plan.standOff=1").sets()).allMatch(Difference.Given::planned);
    }

    /**
     * A gauge belongs to the wire it was read on. Force goes with the modulus exactly (supports only impose
     * displacements): 180 to 90 GPa halves it.
     */
    @Test
    void aGaugeReadingFollowsTheModelAndIsAnEstimateThen() throws Exception {
        Case c = Edit.set(read("stilt-10-gauge-overrides.yaml"), "/wire/modulus", 180);
        assertThat(of(c, "wire.modulus=90").estimates()).singleElement().satisfies(e -> {
            assertThat(e.visit()).isEqualTo(1);
            assertThat(e.read().value()).isEqualTo(205);
            assertThat(e.instead().value()).isEqualTo(102.5, within(1e-9));
            // half the gauge's own error, and a fifth of the change
            assertThat(e.instead().sd()).isEqualTo(Math.hypot(e.read().sd() / 2, 20.5), within(1e-9));
        });
        Difference less = of(c, "visits.0.left.standOff=1", "visits.0.right.standOff=1");
        double model = less.numbers().stream()
                .filter(n -> n.id().equals("wire.force.1.high"))
                .mapToDouble(n -> n.after().value() / n.before().value())
                .findFirst()
                .orElseThrow();
        assertThat(less.estimates())
                .singleElement()
                .satisfies(e -> assertThat(e.instead().value()).isCloseTo(205 * model, within(0.02 * 205)));
        assertThat(WhatIfText.of(less))
                .contains("an estimate")
                .satisfies(t -> assertThat(t.lines()).allMatch(l -> Wrap.columns(l) <= Wrap.WIDTH));
    }

    @Test
    void aGaugeReadingIsKeptOrForgottenWhereNothingScalesIt() throws Exception {
        Case c = read("stilt-10-gauge-overrides.yaml");
        assertThat(of(c, "plan.standOff=1").estimates()).isEmpty();
        assertThat(of(c, "visits.0.gauge=150", "visits.0.left.standOff=1").estimates())
                .isEmpty();
        Case unmeasured = Edit.forget(c, "/bench/left/length");
        assertThat(of(unmeasured, "visits.0.left.standOff=1").estimates())
                .singleElement()
                .matches(e -> !e.instead().known());
        assertThat(of(unmeasured, "visits.0.left.space=19").estimates()).isEmpty();
    }
}
