package dev.fairlead.audit.run;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** A few things that one thread works on, and their results; each result is set once, by whoever comes first. */
final class Bundle<I, O> {
    private final List<I> things;
    private final AtomicReferenceArray<O> results;
    private final CountDownLatch open;

    Bundle(List<I> things) {
        this.things = List.copyOf(things);
        this.results = new AtomicReferenceArray<>(things.size());
        this.open = new CountDownLatch(things.size());
    }

    int size() {
        return things.size();
    }

    I thing(int i) {
        return things.get(i);
    }

    /** False when there is a result already. */
    boolean put(int i, O result) {
        boolean first = results.compareAndSet(i, null, result);
        if (first) {
            open.countDown();
        }
        return first;
    }

    O result(int i) {
        return results.get(i);
    }

    /** Waits a while; true when every result is there. */
    boolean await() {
        try {
            return open.await(200, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Pool.Stopped(e);
        }
    }
}
