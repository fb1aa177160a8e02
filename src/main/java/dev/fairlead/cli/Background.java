package dev.fairlead.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Work that begins now and is waited for when its result is asked for: a rulebase loads while the first case is read and measured. */
final class Background {
    private Background() {}

    static <T> Supplier<T> start(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(task, "loading");
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
            throw new IllegalStateException("interrupted while loading", e);
        }
    }
}
