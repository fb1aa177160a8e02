package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.facts.Antimeres;
import dev.fairlead.facts.LowerIncisor;
import dev.fairlead.facts.ToothWidth;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which widths are asked for, and what is told of the lower incisors. */
class ToothFactsTest {
    private static List<Integer> widths(CaseBuilder b) {
        return Made.all(b, ToothWidth.class).stream()
                .map(f -> f.tooth().number())
                .toList();
    }

    private static List<Integer> pairs(CaseBuilder b) {
        return Made.all(b, Antimeres.class).stream().map(f -> f.left().number()).toList();
    }

    @Test
    void widthsOfTheFourIncisorsAreAlwaysAskedFor() {
        assertThat(widths(new CaseBuilder())).containsExactly(42, 41, 31, 32);
        assertThat(pairs(new CaseBuilder())).containsExactly(31, 32);
    }

    @Test
    void bothOfAPairThatWereMeasuredAreHeldAgainstEachOther() {
        CaseBuilder b = new CaseBuilder()
                .set("/teeth/33/width", 6.8)
                .set("/teeth/43/width", 7.1)
                // as a canine that was measured on a model and has been lost since
                .set("/teeth/33/state", "missing")
                .set("/teeth/43/state", "missing");
        assertThat(widths(b)).containsExactlyInAnyOrder(42, 41, 31, 32, 33, 43);
        assertThat(pairs(b)).containsExactlyInAnyOrder(31, 32, 33);
        assertThat(Made.at(b, Antimeres.class, "/teeth/33").difference().value())
                .isCloseTo(0.3, within(1e-9));
    }

    /** The states are of the tooth that was not measured and of the permanent tooth at its place. */
    @ParameterizedTest
    @CsvSource({
        "43, 33, '', '', true",
        "43, 33, erupted, '', true",
        "43, 33, unerupted, '', false",
        "43, 33, missing, '', false",
        "43, 33, primary-present, '', false",
        "33, 43, '', '', true",
        "33, 43, erupted, '', true",
        "33, 43, unerupted, '', false",
        "13, 23, '', '', true",
        "23, 13, missing, '', false",
        "84, 74, '', '', true",
        "84, 74, '', primary-present, true",
        "84, 74, '', unerupted, false",
        "84, 74, '', erupted, false",
        "84, 74, erupted, erupted, true",
        "84, 74, primary-present, '', true",
        "84, 74, primary-present, unerupted, true",
        "84, 74, missing, '', false",
        "84, 74, missing, primary-present, true",
        "84, 74, unerupted, unerupted, false",
        "74, 84, missing, '', false",
        "74, 84, '', '', true"
    })
    void aPairWaitsForTheOtherUnlessThatIsKnownNotToStand(
            int measured, int other, String state, String ofPlace, boolean asked) {
        CaseBuilder b = new CaseBuilder().set("/teeth/" + measured + "/width", 7.0);
        if (!state.isEmpty()) {
            b.set("/teeth/" + other + "/state", state);
        }
        if (!ofPlace.isEmpty()) {
            b.set("/teeth/" + (other - 40) + "/state", ofPlace);
        }
        assertThat(widths(b).contains(other)).isEqualTo(asked);
        assertThat(widths(b)).contains(measured);
        int left = (measured / 10) % 4 == 2 || (measured / 10) % 4 == 3 ? measured : other;
        assertThat(pairs(b).contains(left)).isEqualTo(asked);
        if (asked) {
            assertThat(Made.at(b, Antimeres.class, "/teeth/" + left)
                            .difference()
                            .missing())
                    .containsExactly("/teeth/" + other + "/width");
        }
    }

    private static LowerIncisor incisor(CaseBuilder b) {
        return Made.at(b, LowerIncisor.class, "/teeth/41");
    }

    @Test
    void aRecessionOfNoughtWasNotMisread() {
        CaseBuilder b = new CaseBuilder();
        assertThat(incisor(b.set("/teeth/41/recession", 0.0)).recession().sd()).isZero();
        Measured seen = incisor(b.set("/teeth/41/recession", 1.0)).recession();
        assertThat(seen.value()).isEqualTo(1);
        assertThat(seen.sd()).isPositive();
        assertThat(incisor(b.without("/teeth/41/recession")).recession().missing())
                .containsExactly("/teeth/41/recession");
    }

    @Test
    void anAdvanceIsPlannedWhereOneSideHasOne() {
        CaseBuilder b = new CaseBuilder();
        assertThat(incisor(b.set("/plan/advanceLeft", 0.0).set("/plan/advanceRight", 0.0))
                        .advancePlanned())
                .isEqualTo(Answer.NO);
        assertThat(incisor(b.set("/plan/advanceLeft", Measured.ROUNDING)).advancePlanned())
                .as("what is within rounding is nought")
                .isEqualTo(Answer.NO);
        assertThat(incisor(b.set("/plan/advanceLeft", 0.5)).advancePlanned()).isEqualTo(Answer.YES);
        assertThat(incisor(b.without("/plan/advanceRight")).advancePlanned()).isEqualTo(Answer.YES);
        assertThat(incisor(b.set("/plan/advanceLeft", 0.0)).advancePlanned().missing())
                .containsExactly("/plan/advanceRight");
    }

    /** What an opinion says is asked for only where there is one, and an opinion that says something is there. */
    @ParameterizedTest
    @CsvSource({
        "'', '', unknown, unknown, unknown, /mouth/periodontalOpinion",
        "yes, '', yes, unknown, unknown, /mouth/opinionSays",
        "no, '', no, no, no, ''",
        "never, '', does not apply, no, no, ''",
        "'', may-advance, yes, yes, no, ''",
        "'', do-not-advance, yes, no, yes, ''",
        "yes, may-advance, yes, yes, no, ''",
        "no, do-not-advance, no, no, yes, ''",
        "never, may-advance, does not apply, yes, no, ''"
    })
    void opinions(String given, String says, String opinion, String allows, String forbids, String missing) {
        CaseBuilder b = new CaseBuilder();
        if (!given.isEmpty()) {
            b.set(
                    "/mouth/periodontalOpinion",
                    given.equals("never") ? CaseBuilder.NOT_APPLICABLE : given.equals("yes"));
        }
        if (!says.isEmpty()) {
            b.set("/mouth/opinionSays", says);
        }
        LowerIncisor x = incisor(b);
        assertThat(x.periodontalOpinion()).hasToString(opinion);
        assertThat(x.opinionAllows()).hasToString(allows);
        assertThat(x.opinionForbids()).hasToString(forbids);
        if (!missing.isEmpty()) {
            assertThat(x.opinionAllows().missing()).containsExactly(missing);
            assertThat(x.opinionForbids().missing()).containsExactly(missing);
        }
    }

    /**
     * Any of the three tells that the wire went in; while nobody said whether the bracket is bonded nothing is told.
     */
    @ParameterizedTest
    @CsvSource({
        "/visits/0/date, 2026-03-01, yes",
        "/insertion/date, 2026-03-01, yes",
        "/insertion/bracketsTied, 4, yes",
        "/insertion/blanching, false, no"
    })
    void aWireThatWentIn(String pointer, String value, String in) {
        Object set = pointer.endsWith("date")
                ? value
                : pointer.endsWith("Tied") ? (Object) Integer.valueOf(value) : Boolean.valueOf(value);
        CaseBuilder b = new CaseBuilder().set(pointer, set).set("/hardware/brackets/41/bonded", true);
        assertThat(incisor(b).wireIn()).hasToString(in);
        assertThat(incisor(b.without("/hardware/brackets/41/bonded")).wireIn().missing())
                .containsExactly("/hardware/brackets/41/bonded");
    }
}
