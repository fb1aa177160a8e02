package dev.fairlead.check.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.whatif.Difference.Kind;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.Format;
import dev.fairlead.model.Case;
import dev.fairlead.report.text.WhatIfText;
import dev.fairlead.report.text.Wrap;
import dev.fairlead.rules.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values that a person tries on a demo case: what changes and what is refused. */
class SettingsTest {
    private static final Checker CHECKER = new Checker(Rulebase.fromFolder(Path.of("rules")));
    private static final CheckOptions OPTIONS = CheckOptions.USUAL.with(Doubting.NONE);

    private static Difference of(String... sets) throws Settings.Refused, IOException {
        Path file = Path.of("cases/whimbrel-06-class-iii-tendency.yaml");
        Case c = CaseReader.read(Files.readAllBytes(file), file.toString(), Format.BY_NAME).value().orElseThrow();
        return Settings.difference(c, "0", List.of(sets), CHECKER, OPTIONS);
    }

    /** An overjet of 1.5 mm less 2.5 mm of advance is -1 mm; less 0.5 mm it is 1 mm, which is what is asked for. */
    @Test
    void numbersAndFindingsFollowByArithmetic() throws Exception {
        Difference d = of("plan.advanceLeft=0.5", "/plan/advanceRight=0,5 mm");
        assertThat(d.numbers()).filteredOn(n -> n.id().equals("position.overjet-after")).singleElement().satisfies(n -> {
            assertThat(n.before().value()).isEqualTo(-1, within(1e-9));
            assertThat(n.after().value()).isEqualTo(1, within(1e-9));
        });
        assertThat(d.findings()).filteredOn(f -> f.kind() == Kind.CLEARED).extracting(f -> f.after().id()).contains("overjet-after");
        assertThat(d.sets()).allMatch(Difference.Given::planned);
        assertThat(d.numbers()).noneMatch(n -> n.id().equals("space.incisor-sum"));
    }

    @Test
    void aFactOfThePatientIsMarkedAsSuch() throws Exception {
        Difference d = of("headFilm.incisorMandibular=104");
        assertThat(d.sets()).noneMatch(Difference.Given::planned);
        assertThat(d.findings()).filteredOn(f -> f.kind() == Kind.GAINED).extracting(f -> f.after().id()).contains("incisor-inclination-before");
        assertThat(WhatIfText.of(d)).contains("not planned").contains("gained").satisfies(t -> assertThat(t.lines()).allMatch(l -> Wrap.columns(l) <= Wrap.WIDTH));
    }

    @Test
    void aFactMadeUnknownIsAChange() throws Exception {
        Difference d = of("bite.overjet=");
        assertThat(d.findings()).filteredOn(f -> f.after().id().equals("overjet-after")).singleElement().matches(f -> f.kind() == Kind.CHANGED);
        assertThat(d.numbers()).filteredOn(n -> n.id().equals("position.overjet-after")).singleElement().matches(n -> !n.after().known());
    }

    @Test
    void whatCannotBeTriedIsRefusedWithTheNearestName() {
        assertThatThrownBy(() -> of("plan.standof=2")).isInstanceOf(Settings.Refused.class).hasMessageContaining("/plan/standOff?");
        assertThatThrownBy(() -> of("plans/standOff=2")).hasMessageContaining("/plan/standOff?");
        assertThatThrownBy(() -> of("plan=2")).hasMessageContaining("advanceLeft");
        assertThatThrownBy(() -> of("teeth.31.widht=5")).hasMessageContaining("/teeth/31/width?");
        assertThatThrownBy(() -> of("xyzzy=2")).hasMessageContaining("/xyzzy");
        assertThatThrownBy(() -> of("plan.standOff")).hasMessageContaining("path=value");
        assertThatThrownBy(() -> of("plan.standOff=far")).hasMessageContaining("0 to 6 mm");
        assertThatThrownBy(() -> of("plan.standOff=60")).hasMessageContaining("0 to 6 mm");
        assertThatThrownBy(() -> of("visits.9.left.gapOpened=1")).hasMessageContaining("/visits/9");
    }
}
