package dev.fairlead.measure.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** A point moves within the plane that lengths are taken on. */
class PlacesTest {
    @Test
    void aPointIsMovedAlongTheAxesOfThePlane() {
        // a plane that rises 3 mm in 5 along its second axis
        Places places = new Places(
                Map.of("D42", new double[] {1, 2, 3}, "M42", new double[] {6, 2, 3}),
                Places.X,
                new double[] {0, 0.8, 0.6});
        Places moved = places.moved("D42", 2, 5);
        assertThat(moved.at().get("D42")).containsExactly(new double[] {3, 6, 6}, within(1e-12));
        assertThat(moved.at().get("M42")).containsExactly(6, 2, 3);
        assertThat(places.at().get("D42")).as("a copy moves").containsExactly(1, 2, 3);
        assertThat(moved.across("D42", "M42")).isCloseTo(Math.hypot(3, 5), within(1e-12));
    }
}
