package dev.fairlead.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The parts of the damaged inputs are all of them. */
class DamageTest {
    @Test
    void partsAddUpToAll() {
        assertThat(Arrays.stream(Damage.Kind.values())
                        .mapToInt(Damage.Kind::inputs)
                        .sum())
                .isEqualTo(Integer.getInteger("fairlead.fuzz", 2000));
    }
}
