package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.Place;
import dev.fairlead.model.Side;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Entries of a list are counted from 0 in a JSON Pointer (RFC 6901), and visits from 1 by people. */
class FactPlacesTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 59, 60, 61, 99})
    void everyVisitHasAPlaceHoweverManyThereAre(int index) {
        assertThat(FactPlaces.visit(index)).isEqualTo(new Place("/visits/" + index, "visit " + (index + 1)));
        assertThat(FactPlaces.visit(index, Side.LEFT))
                .isEqualTo(new Place("/visits/" + index + "/left", "visit " + (index + 1) + ", left"));
        assertThat(FactPlaces.visit(index, Side.RIGHT))
                .isEqualTo(new Place("/visits/" + index + "/right", "visit " + (index + 1) + ", right"));
    }
}
