package dev.fairlead.audit.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Works on a stream of things by several threads and hands the results on in the order of the things, never holding
 * more than a few bundles at once. What takes longer than a limit is given up: its thread is left behind, and another
 * goes on.
 */
final class Pool<I, O> {
    /** Threads that hang for good; beyond it the machine is no longer able to go on. */
    private static final int MOST_STUCK = 64;

    private static final int QUEUED_PER_THREAD = 4;

    private final int threads;
    private final long limitNanos;
    private final Function<I, O> work;
    private final Function<I, O> givenUp;
    private final ToIntFunction<I> size;
    private final BlockingQueue<Bundle<I, O>> todo;
    private final BlockingQueue<Bundle<I, O>> order;
    private final Set<Worker> workers = ConcurrentHashMap.newKeySet();
    private final List<Thread> leftBehind = new ArrayList<>();
    private final Bundle<I, O> end = new Bundle<>(List.of());
    private volatile @Nullable Throwable failure;
    private volatile boolean over;

    /** {@code givenUp} makes the result of what took too long; {@code size} is in bytes. */
    Pool(int threads, long limitNanos, Function<I, O> work, Function<I, O> givenUp, ToIntFunction<I> size) {
        this.threads = threads;
        this.limitNanos = limitNanos;
        this.work = work;
        this.givenUp = givenUp;
        this.size = size;
        this.todo = new ArrayBlockingQueue<>(QUEUED_PER_THREAD * threads);
        this.order = new ArrayBlockingQueue<>(2 * QUEUED_PER_THREAD * threads);
    }

    /** The end of an audit that cannot go on. */
    static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stopped(Throwable cause) {
            super(cause);
        }
    }

    /** Runs {@code producer} on a thread of its own and {@code consumer} on this one, to the end. */
    void run(Consumer<Consumer<I>> producer, Consumer<O> consumer) {
        Thread feeder = new Thread(() -> feed(producer), "audit-source");
        feeder.setDaemon(true);
        feeder.start();
        for (int i = 0; i < threads; i++) {
            start(null, 0);
        }
        Thread watch = new Thread(this::watch, "audit-watch");
        watch.setDaemon(true);
        watch.start();
        try {
            for (Bundle<I, O> b = next(); b != end; b = next()) {
                while (!b.await()) {
                    check();
                }
                for (int i = 0; i < b.size(); i++) {
                    consumer.accept(b.result(i));
                }
            }
        } finally {
            over = true;
            watch.interrupt();
            feeder.interrupt();
            workers.forEach(Thread::interrupt);
        }
    }

    private Bundle<I, O> next() {
        try {
            while (true) {
                Bundle<I, O> b = order.poll(200, TimeUnit.MILLISECONDS);
                if (b != null) {
                    return b;
                }
                check();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Stopped(e);
        }
    }

    private void check() {
        Throwable met = failure;
        if (met != null) {
            throw new Stopped(met);
        }
    }

    private void feed(Consumer<Consumer<I>> producer) {
        try {
            Bundler<I> bundler = new Bundler<>(size, things -> hand(new Bundle<>(things)));
            producer.accept(bundler);
            bundler.flush();
            order.put(end);
        } catch (InterruptedException | Stopped e) {
            // nobody waits for more
        } catch (RuntimeException | Error e) {
            failure = e;
        }
    }

    private void hand(Bundle<I, O> bundle) {
        try {
            order.put(bundle);
            todo.put(bundle);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Stopped(e);
        }
    }

    private void start(@Nullable Bundle<I, O> rest, int from) {
        Worker w = new Worker(rest, from);
        w.setDaemon(true);
        workers.add(w);
        w.start();
    }

    /** What a worker is at, and since when. */
    private record Turn<I, O>(Bundle<I, O> bundle, int index, long since) {}

    private final class Worker extends Thread {
        private final @Nullable Bundle<I, O> rest;
        private final int from;
        private volatile @Nullable Turn<I, O> turn;

        Worker(@Nullable Bundle<I, O> rest, int from) {
            super("audit-worker");
            this.rest = rest;
            this.from = from;
        }

        @Override
        public void run() {
            try {
                boolean go = rest == null || through(rest, from);
                while (go) {
                    go = through(todo.take(), 0);
                }
            } catch (InterruptedException e) {
                // the audit is over
            } catch (Throwable t) {
                failure = t;
            } finally {
                workers.remove(this);
            }
        }

        /** False when this thread was given up meanwhile. */
        private boolean through(Bundle<I, O> bundle, int first) {
            for (int i = first; i < bundle.size(); i++) {
                turn = new Turn<>(bundle, i, System.nanoTime());
                O made = work.apply(bundle.thing(i));
                turn = null;
                if (!bundle.put(i, made)) {
                    return false;
                }
            }
            return true;
        }
    }

    private void watch() {
        long pause = Math.max(5, Math.min(200, limitNanos / 10_000_000));
        try {
            while (!over) {
                Thread.sleep(pause);
                for (Worker w : List.copyOf(workers)) {
                    Turn<I, O> t = w.turn;
                    if (t != null
                            && System.nanoTime() - t.since() > limitNanos
                            && t.bundle()
                                    .put(t.index(), givenUp.apply(t.bundle().thing(t.index())))) {
                        workers.remove(w);
                        leftBehind.removeIf(old -> !old.isAlive());
                        leftBehind.add(w);
                        w.interrupt();
                        if (leftBehind.size() > MOST_STUCK) {
                            failure = new IllegalStateException(
                                    "more than " + MOST_STUCK + " cases hang, the machine cannot go on");
                            return;
                        }
                        start(t.bundle(), t.index() + 1);
                    }
                }
            }
        } catch (InterruptedException e) {
            // the audit is over
        }
    }
}
