package dev.fairlead.audit.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PoolTest {
    private static final long LONG = Duration.ofMinutes(5).toNanos();

    @Test
    @SuppressWarnings("ThreadPriorityCheck") // to mix the order
    void resultsComeInOrderWhateverTheThreadsDo() {
        List<Integer> got = new ArrayList<>();
        new Pool<Integer, Integer>(
                        4,
                        LONG,
                        i -> {
                            Thread.yield();
                            return i * i;
                        },
                        i -> -1,
                        i -> 1)
                .run(sink -> IntStream.range(0, 5000).forEach(sink::accept), got::add);
        assertThat(got).isEqualTo(IntStream.range(0, 5000).mapToObj(i -> i * i).toList());
    }

    @Test
    void theSourceNeverRunsFarAhead() {
        AtomicInteger made = new AtomicInteger();
        AtomicInteger taken = new AtomicInteger();
        AtomicInteger farthest = new AtomicInteger();
        new Pool<Integer, Integer>(2, LONG, i -> i, i -> -1, i -> 1)
                .run(
                        sink -> IntStream.range(0, 20_000).forEach(i -> {
                            farthest.accumulateAndGet(made.incrementAndGet() - taken.get(), Math::max);
                            sink.accept(i);
                        }),
                        i -> taken.incrementAndGet());
        // bundles of 32: 16 in order, one that is filled, one that is handed on, one that is being taken
        assertThat(farthest.get()).isLessThanOrEqualTo(32 * 20);
    }

    @Test
    void whatHangsIsGivenUpAndTheRestOfItsBundleGoesOn() {
        CountDownLatch never = new CountDownLatch(1);
        List<Integer> got = new ArrayList<>();
        new Pool<Integer, Integer>(
                        1,
                        Duration.ofMillis(300).toNanos(),
                        i -> {
                            if (i == 3 || i == 40) {
                                hang(never);
                            }
                            return i;
                        },
                        i -> -i,
                        i -> 1)
                .run(sink -> IntStream.range(0, 70).forEach(sink::accept), got::add);
        assertThat(got).hasSize(70).contains(-3, -40, 4, 41, 69).doesNotContain(3, 40);
        assertThat(got.indexOf(-3)).isEqualTo(3);
        never.countDown();
    }

    /** Does not heed an interrupt, as a tight loop would not. */
    private static void hang(CountDownLatch never) {
        while (true) {
            try {
                never.await();
                return;
            } catch (InterruptedException e) {
                // and goes on
            }
        }
    }

    @Test
    void aFailureOfAnyPartEndsTheRun() {
        assertThatThrownBy(() -> new Pool<Integer, Integer>(
                                2,
                                LONG,
                                i -> {
                                    throw new IllegalStateException("work");
                                },
                                i -> -1,
                                i -> 1)
                        .run(sink -> sink.accept(1), i -> {}))
                .isInstanceOf(Pool.Stopped.class)
                .hasRootCauseMessage("work");
        assertThatThrownBy(() -> new Pool<Integer, Integer>(2, LONG, i -> i, i -> -1, i -> 1)
                        .run(
                                sink -> {
                                    throw new IllegalStateException("source");
                                },
                                i -> {}))
                .isInstanceOf(Pool.Stopped.class)
                .hasRootCauseMessage("source");
        assertThatThrownBy(() -> new Pool<Integer, Integer>(2, LONG, i -> i, i -> -1, i -> 1)
                        .run(sink -> IntStream.range(0, 100_000).forEach(sink::accept), i -> {
                            throw new IllegalStateException("disk full");
                        }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("disk full");
    }
}
