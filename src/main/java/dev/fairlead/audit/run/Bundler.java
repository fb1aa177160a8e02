package dev.fairlead.audit.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToIntFunction;

/** Ties things together by a few, or fewer when they are large. */
final class Bundler<I> implements Consumer<I> {
    private static final int MOST = 32;
    private static final int MOST_BYTES = 1 << 20;

    private final ToIntFunction<I> size;
    private final Consumer<List<I>> ready;
    private List<I> open = new ArrayList<>(MOST);
    private int bytes;

    Bundler(ToIntFunction<I> size, Consumer<List<I>> ready) {
        this.size = size;
        this.ready = ready;
    }

    @Override
    public void accept(I thing) {
        open.add(thing);
        bytes += size.applyAsInt(thing);
        if (open.size() == MOST || bytes >= MOST_BYTES) {
            flush();
        }
    }

    void flush() {
        if (!open.isEmpty()) {
            ready.accept(open);
            open = new ArrayList<>(MOST);
            bytes = 0;
        }
    }
}
