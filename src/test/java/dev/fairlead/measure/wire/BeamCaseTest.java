package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Answers of the beam model are kept by what it was asked: nothing that changes an answer may look the same. */
class BeamCaseTest {
    private static BeamCase ask(CaseBuilder b, double right, double left) {
        return new BeamInputs(b.build(), Measured.exact(right, Unit.MM), Measured.exact(left, Unit.MM))
                .ask(right, left);
    }

    private static BeamCase with(String pointer, double value) {
        return ask(BaseCase.of().set(pointer, value), 1.5, 1.25);
    }

    @Test
    void everyPartOfAQuestionTellsItFromOthers() {
        BeamCase usual = ask(BaseCase.of(), 1.5, 1.25);
        List<BeamCase> others = List.of(
                usual,
                with("/wire/size", 0.457),
                with("/arch/molarWidth", 44.5),
                with("/hardware/left/length", 3.5),
                with("/hardware/brackets/31/fromMidline", 3),
                with("/hardware/brackets/32/fromMidline", 8.5),
                with("/bench/right/bendRadius", 0.8),
                with("/bench/left/bendRadius", 0.8),
                ask(BaseCase.of(), 1.25, 1.25),
                ask(BaseCase.of(), 1.5, 1.5),
                usual.withTubesAbove(0),
                usual.withTubesAbove(2));
        for (int i = 0; i < others.size(); i++) {
            for (int j = 0; j < others.size(); j++) {
                assertThat(others.get(i).equals(others.get(j)))
                        .as(i + " and " + j)
                        .isEqualTo(i == j);
            }
        }
        assertThat(others.stream().map(BeamCase::hashCode).distinct())
                .as("spread enough to be looked up by")
                .hasSizeGreaterThan(others.size() / 2);
        BeamCase again = ask(BaseCase.of(), 1.5, 1.25);
        assertThat(again).isEqualTo(usual).hasSameHashCodeAs(usual);
    }

    @Test
    void tubeAndBracketsAreTheMeansOfBothSides() {
        BeamCase c = ask(
                BaseCase.of()
                        .set("/hardware/left/length", 4)
                        .set("/hardware/brackets/31/fromMidline", 3.1)
                        .set("/hardware/brackets/32/fromMidline", 8.7),
                1.5,
                1.25);
        assertThat(c.tubeLength()).isEqualTo(3.5);
        // 2.7 and 3.1, 8.3 and 8.7; the line lies on the arch
        assertThat(c.central()).isCloseTo(2.9, within(1e-6));
        assertThat(c.lateral()).isCloseTo(8.5, within(1e-6));
    }

    /**
     * A wire levelled to its closed folds leaves the gingival travel at the tube: by the reference model 1.898099 mm
     * for 1.5 mm of stand-off, times the cosine of the tip.
     */
    @Test
    void tubesLieAsHighAsTheyWereMeasuredOverWhatTheFoldsSink() {
        double sinks = 1.898099 * Math.cos(Math.toRadians(20));
        BeamCase c = ask(BaseCase.of(), 1.5, 1.5);
        assertThat(c.tiedIn().orElseThrow().arch().bracketLevel()).isEqualTo(OptionalDouble.empty());
        assertThat(c.withTubesAbove(0.5)
                        .tiedIn()
                        .orElseThrow()
                        .arch()
                        .bracketLevel()
                        .orElseThrow())
                .isCloseTo(sinks - 0.5, within(1e-5));
        // by 0.85 and 1.44 mm for stand-offs of 0.5 and 1 mm: the mean of both sides
        double both = (0.85 + 1.44) / 2 * Math.cos(Math.toRadians(20));
        assertThat(ask(BaseCase.of(), 1, 0.5)
                        .withTubesAbove(0.5)
                        .tiedIn()
                        .orElseThrow()
                        .arch()
                        .bracketLevel()
                        .orElseThrow())
                .isCloseTo(both - 0.5, within(0.01));
    }
}
