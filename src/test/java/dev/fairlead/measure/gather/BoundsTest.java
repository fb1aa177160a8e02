package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import org.junit.jupiter.api.Test;

/** What can be told of a number while something that it rests on is missing. */
class BoundsTest {
    private static final Measured TWO = Measured.exact(2, Unit.MM);
    private static final Measured THREE = Measured.exact(3, Unit.MM);
    private static final Measured LEFT = Measured.unknown("/space/left");
    private static final Measured RIGHT = Measured.unknown("/space/right");

    @Test
    void ofTwoTheLargerAndTheSmallerAndOfOneThatIsKnownThatOne() {
        assertThat(Bounds.largestKnown(TWO, THREE)).isEqualTo(THREE);
        assertThat(Bounds.largestKnown(THREE, TWO)).isEqualTo(THREE);
        assertThat(Bounds.smallestKnown(TWO, THREE)).isEqualTo(TWO);
        assertThat(Bounds.smallestKnown(THREE, TWO)).isEqualTo(TWO);
        assertThat(Bounds.largestKnown(TWO, RIGHT)).isEqualTo(TWO);
        assertThat(Bounds.largestKnown(LEFT, TWO)).isEqualTo(TWO);
        assertThat(Bounds.smallestKnown(TWO, RIGHT)).isEqualTo(TWO);
        assertThat(Bounds.smallestKnown(LEFT, TWO)).isEqualTo(TWO);
        assertThat(Bounds.largestKnown(LEFT, RIGHT).missing()).containsExactly("/space/left", "/space/right");
        assertThat(Bounds.smallestKnown(LEFT, RIGHT).missing()).containsExactly("/space/left", "/space/right");
    }

    @Test
    void aBoundStandsInForWhatIsMissingAlone() {
        assertThat(Bounds.or(TWO, THREE)).isEqualTo(TWO);
        assertThat(Bounds.or(LEFT, THREE)).isEqualTo(THREE);
        assertThat(Bounds.or(LEFT, RIGHT)).isEqualTo(LEFT);
        assertThat(Bounds.or(Measured.notApplicable(), THREE).applies()).isFalse();
    }
}
