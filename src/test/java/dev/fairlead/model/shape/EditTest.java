package dev.fairlead.model.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Choices.Sex;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class EditTest {
    private static final Case EMPTY = Draft.of(Case.class, "")
            .set("fairlead", 1)
            .set("id", "knot-01")
            .set("stage", Stage.RECORDS)
            .make();

    @Test
    void setsANumberWithTheUnitAndErrorOfItsField() {
        Case changed = Edit.set(EMPTY, "/bite/overjet", 3.5);
        assertThat(changed.bite().overjet().value()).isEqualTo(3.5);
        assertThat(changed.bite().overjet().unit()).isEqualTo(Unit.MM);
        assertThat(changed.bite().overjet().sd()).isEqualTo(0.25);
        assertThat(changed.bite().overjet().sources()).containsExactly("/bite/overjet");
        assertThat(EMPTY.bite().overjet().known()).isFalse();
        assertThat(changed.bite().overbite()).isEqualTo(EMPTY.bite().overbite());
    }

    @Test
    void severalReadingsCountAsTheirMeanWithTheErrorOfAMean() {
        // GUM (JCGM 100:2008) 4.2.3: the standard uncertainty of a mean of n independent readings is s / sqrt(n)
        Measured width =
                (Measured) Edit.get(Edit.set(EMPTY, "/teeth/41/width", List.of(5.3, 5.5, 5.4, 5.4)), "/teeth/41/width");
        assertThat(width.value()).isCloseTo(5.4, within(1e-12));
        assertThat(width.sd()).isCloseTo(0.10 / 2, within(1e-12));
        assertThat(width.repeats()).containsExactly(5.3, 5.5, 5.4, 5.4);
    }

    @Test
    void setsEveryKindOfFactFromAPlainValue() {
        Case c = Edit.set(EMPTY, "/child/sex", "female");
        c = Edit.set(c, "/mouth/untreatedCaries", false);
        c = Edit.set(c, "/films/models", "2026-03-01");
        c = Edit.set(c, "/plan/start", LocalDate.of(2026, 4, 1));
        c = Edit.set(c, "/resident", "r07");
        c = Edit.set(c, "/stage", "bench");
        c = Edit.set(c, "/contacts/43-42", 1.2);
        c = Edit.set(c, "/bite/molarLeft", Fact.notApplicable());
        c = Edit.set(c, "/headFilm/tippingRadius", Measured.notApplicable());
        assertThat(c.child().sex().is(Sex.FEMALE)).isTrue();
        assertThat(c.mouth().untreatedCaries()).isEqualTo(Answer.NO);
        assertThat(c.films().models().get()).isEqualTo("2026-03-01");
        assertThat(c.plan().start().get()).isEqualTo("2026-04-01");
        assertThat(c.resident().get()).isEqualTo("r07");
        assertThat(c.stage().get()).isEqualTo(Stage.BENCH);
        assertThat(c.contacts().c4342().value()).isEqualTo(1.2);
        assertThat(c.bite().molarLeft().applies()).isFalse();
        assertThat(c.headFilm().tippingRadius().applies()).isFalse();
    }

    @Test
    void reachesIntoListsAndTeeth() {
        Case c = Edit.set(EMPTY, "/visits/-", Draft.of(Visit.class, "/visits/0").make());
        c = Edit.set(
                c,
                "/visits/-",
                Draft.of(Visit.class, "/visits/1").set("gauge", 200).make());
        c = Edit.set(c, "/visits/0/left/gapOpened", 0.5);
        c = Edit.set(c, "/hardware/brackets/32/bonded", true);
        assertThat(c.visits()).hasSize(2);
        assertThat(c.visits().get(0).left().gapOpened().value()).isEqualTo(0.5);
        assertThat(c.visits().get(1).gauge().value()).isEqualTo(200);
        assertThat(c.hardware().bracket(Tooth.of(32)).bonded()).isEqualTo(Answer.YES);
        assertThat(((CaseValue) Edit.get(c, "/hardware/brackets/31/loose")).missing())
                .containsExactly("/hardware/brackets/31/loose");
    }

    @Test
    void forgettingMakesAFactUnknownAtItsOwnPointer() {
        Case full = Edit.set(Edit.set(EMPTY, "/teeth/41/width", 5.4), "/bite/overjet", 3);
        Case less = Edit.forget(full, "/bite/overjet");
        assertThat(less.bite().overjet().missing()).containsExactly("/bite/overjet");
        assertThat(Edit.forget(less, "/teeth/41")).isEqualTo(EMPTY);
        assertThat(Edit.forget(full, "/bite").bite()).isEqualTo(EMPTY.bite());
        assertThat(Edit.forget(full, "/teeth").teeth()).isEmpty();
        assertThat(Edit.forget(EMPTY, "/teeth/33")).isEqualTo(EMPTY);
    }

    @Test
    void aForgottenVisitKeepsItsPlace() {
        Case c = Edit.set(
                EMPTY,
                "/visits/-",
                Draft.of(Visit.class, "/visits/0").set("gauge", 180).make());
        c = Edit.set(
                c,
                "/visits/-",
                Draft.of(Visit.class, "/visits/1").set("gauge", 200).make());
        Case less = Edit.forget(c, "/visits/0");
        assertThat(less.visits()).hasSize(2);
        assertThat(less.visits().get(0).gauge().missing()).containsExactly("/visits/0/gauge");
        assertThat(less.visits().get(1).gauge().value()).isEqualTo(200);
    }

    @Test
    void listsEveryFactOnceAndEachCanBeReadSetAndForgotten() {
        Case c = Edit.set(
                Edit.set(EMPTY, "/visits/-", Draft.of(Visit.class, "/visits/0").make()), "/teeth/41/width", 5.4);
        List<String> pointers = Edit.factPointers(c);
        assertThat(new HashSet<>(pointers)).hasSameSizeAs(pointers);
        assertThat(pointers)
                .contains(
                        "/date",
                        "/teeth/41/keratinised",
                        "/visits/0/right/space",
                        "/holding/contacts/32-33",
                        "/hardware/contactsNow/42-41")
                .doesNotContain("/id", "/fairlead", "/bite");
        for (String p : pointers) {
            CaseValue fact = (CaseValue) Edit.get(c, p);
            assertThat(Edit.set(c, p, fact)).isEqualTo(c);
            CaseValue gone = (CaseValue) Edit.get(Edit.forget(c, p), p);
            assertThat(gone.missing()).as(p).containsExactly(p);
        }
    }

    @Test
    void refusesWhatLeadsNowhereOrDoesNotFit() {
        for (String p : List.of(
                "bite",
                "/nothing",
                "/bite/overjet/x",
                "/visits/0",
                "/visits/-/date",
                "/teeth/19/width",
                "/teeth/99",
                "/teeth/4 1",
                "")) {
            assertThatThrownBy(() -> Edit.set(EMPTY, p, 1)).as(p).isInstanceOf(IllegalArgumentException.class);
        }
        for (String p : List.of("bite", "/nothing", "/bite/overjet/x", "/visits/0", "/visits/-", "/teeth/19/width")) {
            assertThatThrownBy(() -> Edit.get(EMPTY, p)).as(p).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> Edit.set(EMPTY, "/bite/overjet", "three")).hasMessageContaining("/bite/overjet");
        assertThatThrownBy(() -> Edit.set(EMPTY, "/child/sex", "unclear")).hasMessageContaining("/child/sex");
        assertThatThrownBy(() -> Edit.set(EMPTY, "/child/sex", Fact.of("female")))
                .hasMessageContaining("/child/sex");
        assertThatThrownBy(() -> Edit.set(EMPTY, "/bite/overjet", null)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Edit.forget(EMPTY, "/id")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Edit.forget(EMPTY, "/fairlead")).isInstanceOf(IllegalArgumentException.class);
    }
}
