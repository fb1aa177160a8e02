package dev.fairlead.intake.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CaseTreeTest {
    private static CaseTree start() throws UnreadableTextException {
        return CaseTree.parse(
                "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\",\"wire\":{\"size\":0.5080}}", CaseFormat.JSON);
    }

    @Test
    void whatAPersonTypesIsReadAsThatKindOfValue() throws UnreadableTextException {
        CaseTree t = start();
        t.set("/stage", "activation");
        t.set("/plan/advanceLeft", "2,5");
        t.set("/plan/standOff", " 1.5 ");
        t.set("/teeth/31/width", "5.4; 5,5 mm");
        t.set("/consent/guardian", "Yes");
        t.set("/visits/0/date", "2026-03-09");
        t.set("/visits/-/left/gapOpened", "1");
        t.set("/landmarks/0/tooth", "31");
        t.set("/contacts/43-42", "0.5");
        CaseReading r = t.read("x");
        assertThat(r.problems()).isEmpty();
        Case c = r.value().orElseThrow();
        assertThat(c.plan().advanceLeft().value()).isEqualTo(2.5);
        assertThat(c.plan().standOff().value()).isEqualTo(1.5);
        assertThat(c.tooth(Tooth.of(31)).width().repeats()).containsExactly(5.4, 5.5);
        assertThat(c.consent().guardian()).isEqualTo(Answer.YES);
        assertThat(c.visits()).hasSize(2);
        assertThat(c.landmarks().get(0).tooth().get()).isEqualTo(Tooth.of(31));
        assertThat(t.get("/teeth/31/width")).contains("5.4; 5,5 mm");
        assertThat(t.get("/consent/guardian")).contains("yes");
        assertThat(t.get("/wire/size")).contains("0.5080");
        assertThat(t.get("/wire/none")).isEmpty();
        assertThat(t.size("/visits")).isEqualTo(2);
        assertThat(t.keys("/plan")).containsExactly("advanceLeft", "standOff");
    }

    @Test
    void blankTextAndRemoveTakeAwayWhatIsThereAndEmptyParents() throws UnreadableTextException {
        CaseTree t = start();
        CaseTree copy = t.copy();
        t.set("/wire/size", "  ");
        assertThat(t.keys("")).containsExactly("fairlead", "id", "stage");
        t.remove("/plan/standOff");
        t.remove("/visits/3");
        assertThat(copy.get("/wire/size")).contains("0.5080");
        t.set("/visits/0/date", "2026-03-09");
        t.set("/visits/1/date", "2026-03-10");
        t.remove("/visits/0");
        assertThat(t.get("/visits/0/date")).contains("2026-03-10");
        assertThatThrownBy(() -> t.set("/visits/7/date", "2026-03-09")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> t.remove("")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatDoesNotFitStaysAsTypedForTheReaderToRefuse() throws UnreadableTextException {
        CaseTree t = start();
        t.set("/plan/standOff", "about 2");
        t.set("/consent/guardian", "perhaps");
        assertThat(t.read("x").errors())
                .extracting(Problem::pointer)
                .containsExactly("/plan/standOff", "/consent/guardian");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan: {standOff: 0x1F}", "plan: {standOff: 1_0}", "plan: {standOff: 012}"})
    void whatTheReaderRefusesIsNotMendedOnTheWay(String part) throws UnreadableTextException {
        CaseTree t = CaseTree.parse("fairlead: 1\nid: a\nstage: records\n" + part + "\n", CaseFormat.YAML);
        assertThat(t.read("x").errors()).extracting(Problem::pointer).containsExactly("/plan/standOff");
        assertThat(CaseReader.read(
                                t.text(CaseFormat.YAML).getBytes(java.nio.charset.StandardCharsets.UTF_8),
                                "x",
                                CaseFormat.YAML)
                        .read())
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a: &x 1\nb: *x\n", "a: !!int 1\n", "a: 1\na: 2\n", "{}\n---\n{}\n", "[1]", "{"})
    void aliasesTagsDoubleKeysAndNonObjectsAreRefused(String text) {
        assertThatThrownBy(() -> CaseTree.parse(text, CaseFormat.YAML))
                .isInstanceOfSatisfying(
                        UnreadableTextException.class,
                        e -> assertThat(e.problem().line()).isPositive());
    }

    @Test
    void pathsFollowTheRecords() {
        assertThat(CasePaths.field("/teeth/31/width").map(FieldShape::kind)).contains(Kind.QUANTITY);
        assertThat(CasePaths.field("/visits/0/left/gapOpened").map(FieldShape::key))
                .contains("gapOpened");
        assertThat(CasePaths.field("/visits").map(FieldShape::kind)).contains(Kind.LIST);
        for (String none : new String[] {
            "",
            "/",
            "/visits/0",
            "/teeth/19/width",
            "/teeth/31",
            "/visits/x/date",
            "/nothing",
            "/plan/standOff/value",
            "plan"
        }) {
            assertThat(CasePaths.field(none)).as(none).isEmpty();
        }
    }
}
