package dev.fairlead.base;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Work that begins now, beside what the caller does next, and is waited for when its result is asked for. */
public final class Background {
    private Background() {}

    /** Begins {@code work} on a thread of its own; what it throws is thrown to whoever asks for its result. */
    public static <T> Supplier<T> start(String what, Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(task, what);
        thread.setDaemon(true);
        thread.start();
        return () -> result(task);
    }

    private static <T> T result(FutureTask<T> task) {
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            if (e.getCause() instanceof Error own) {
                throw own;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting", e);
        }
    }
}
