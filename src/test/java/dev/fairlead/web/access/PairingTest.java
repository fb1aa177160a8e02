package dev.fairlead.web.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** Codes by a clock that the test sets. */
class PairingTest {
    private Instant now = Instant.parse("2026-03-01T08:00:00Z");
    private final Pairing pairing = new Pairing(new Clock() {
        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    });

    private String offer() {
        return pairing.offer("Chair 2", DeviceRole.ASSISTANT).orElseThrow().code();
    }

    @Test
    void aCodeHoldsOnceAndForFiveMinutes() {
        String code = offer();
        assertThat(code).matches("[0-9]{6}");
        now = now.plus(Duration.ofMinutes(5)).minusSeconds(1);
        assertThat(pairing.take(" " + code.substring(0, 3) + " " + code.substring(3))
                        .offer())
                .isPresent();
        assertThat(pairing.take(code).offer()).as("a second time").isEmpty();
        String late = offer();
        now = now.plus(Duration.ofMinutes(5));
        assertThat(pairing.take(late).offer()).as("after five minutes").isEmpty();
        String replaced = offer();
        String fresh = offer();
        assertThat(replaced.equals(fresh) ? "" : pairing.take(replaced).refused())
                .isNotNull();
    }

    @Test
    void wrongCodesWaitLongerAndTheFifthLocks() {
        String code = offer();
        for (int wrong = 1; wrong < Pairing.TRIES; wrong++) {
            assertThat(pairing.take("x").refused()).contains("not the code");
            assertThat(pairing.take(code).refused()).as("at once").contains("Too soon");
            now = now.plusSeconds(1L << wrong).minusMillis(1);
            assertThat(pairing.take(code).refused()).contains("Too soon");
            now = now.plusMillis(1);
        }
        assertThat(pairing.take("x").refused()).contains("fifth wrong code");
        assertThat(pairing.take(code).offer()).as("the right code, now").isEmpty();
        assertThat(pairing.offer("Chair 2", DeviceRole.ASSISTANT)).isEmpty();
        now = now.plus(Pairing.LOCKED);
        assertThat(pairing.take(offer()).offer()).isPresent();
    }
}
