package dev.fairlead.audit.run;

import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.source.Sources;
import java.time.Duration;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;

/** Does something with every case of some sources on all cores, and hands on what came of it in order. */
public final class Each {
    private record Made<T>(T value, long reached) {}

    private Each() {}

    /** {@code givenUp} stands for a case that took longer than the limit. */
    public static <T> void run(
            Sources sources,
            int threads,
            Duration limit,
            Function<Item, T> work,
            Function<Item, T> givenUp,
            Consumer<T> take,
            LongConsumer reached) {
        try {
            new Pool<Item, Made<T>>(
                            threads,
                            limit.toNanos(),
                            i -> new Made<>(work.apply(i), i.reached()),
                            i -> new Made<>(givenUp.apply(i), i.reached()),
                            i -> i.content() instanceof Item.Text t ? t.bytes().length : 4096)
                    .run(sources::each, made -> {
                        take.accept(made.value());
                        reached.accept(made.reached());
                    });
        } catch (Pool.Stopped e) {
            throw new IllegalStateException("the run had to stop: " + e.getCause(), e.getCause());
        }
    }
}
