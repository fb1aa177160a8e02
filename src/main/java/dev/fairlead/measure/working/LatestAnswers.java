package dev.fairlead.measure.working;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;

/** Remembers the answers to the latest questions, up to a limit; safe to share between threads. */
public final class LatestAnswers<Q, A> {
    private final Function<Q, A> work;
    private final Map<Q, FutureTask<A>> known;

    public LatestAnswers(int limit, Function<Q, A> work) {
        this.work = work;
        this.known = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Q, FutureTask<A>> eldest) {
                return size() > limit;
            }
        };
    }

    /** The answer; who asks what another thread is working out waits for that thread. */
    public A of(Q question) {
        FutureTask<A> answer;
        boolean first;
        synchronized (known) {
            FutureTask<A> under = known.get(question);
            first = under == null;
            answer = under != null ? under : new FutureTask<>(() -> work.apply(question));
            if (first) {
                known.put(question, answer);
            }
        }
        if (first) {
            answer.run();
        }
        try {
            return answer.get();
        } catch (ExecutionException e) {
            synchronized (known) {
                known.remove(question, answer);
            }
            if (e.getCause() instanceof Error own) {
                throw own;
            }
            throw e.getCause() instanceof RuntimeException own ? own : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for an answer", e);
        }
    }
}
