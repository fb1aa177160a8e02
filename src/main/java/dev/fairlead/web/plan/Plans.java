package dev.fairlead.web.plan;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.whatif.Difference;
import dev.fairlead.check.whatif.Search;
import dev.fairlead.check.whatif.Suggestion;
import dev.fairlead.check.whatif.TypedChanges;
import dev.fairlead.check.whatif.WhatIf;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.web.edit.Opened;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Searches other plans of cases beside the pages: one case at a time on a thread of its own, so that typing never waits
 * for it; ended when it takes too long, or when the case that it is about was changed; the last answers are kept.
 */
public final class Plans {
    private static final long MOST_SECONDS = 90;
    private static final int KEPT = 32;

    private record Key(String name, String version, LocalDate day) {}

    private record Running(CompletableFuture<PlanSearch> answer, TimeLimit patience) {}

    private final Supplier<Checker> base;
    private final Supplier<LocalDate> today;
    private final long mostSeconds;
    private final ThreadPoolExecutor one;
    private final Map<Key, Running> asked = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Running> eldest) {
            return size() > KEPT && eldest.getValue().answer().isDone();
        }
    };

    public Plans(Supplier<Checker> checker, Supplier<LocalDate> today) {
        this(checker, today, MOST_SECONDS);
    }

    @SuppressWarnings("ThreadPriorityCheck") // where a system heeds it, typing goes before searching
    Plans(Supplier<Checker> checker, Supplier<LocalDate> today, long mostSeconds) {
        base = checker;
        this.today = today;
        this.mostSeconds = mostSeconds;
        one = new ThreadPoolExecutor(1, 1, 20, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), task -> {
            Thread thread = new Thread(task, "other plans");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
        one.allowCoreThreadTimeOut(true);
    }

    /** What would clear the open warnings of a case that was read, as far as it is known after {@code patience}. */
    public PlanSearch of(Opened opened, Duration patience) {
        CompletableFuture<PlanSearch> answer = ask(opened).answer();
        try {
            return answer.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            return PlanSearch.SEARCHING;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return PlanSearch.SEARCHING;
        } catch (java.util.concurrent.ExecutionException e) {
            throw new CompletionException(e.getCause());
        }
    }

    private synchronized Running ask(Opened opened) {
        Key key = new Key(opened.name(), opened.file().version(), today.get());
        Running known = asked.get(key);
        if (known != null) {
            return known;
        }
        // what was searched for an earlier version helps nobody any more
        asked.entrySet().removeIf(e -> {
            boolean old = e.getKey().name().equals(key.name())
                    && !e.getValue().answer().isDone();
            if (old) {
                e.getValue().patience().end();
            }
            return old;
        });
        Running fresh = new Running(new CompletableFuture<>(), new TimeLimit(mostSeconds));
        asked.put(key, fresh);
        Case c = opened.reading().value().orElseThrow();
        one.execute(() -> run(fresh, c, key));
        return fresh;
    }

    private void run(Running to, Case c, Key key) {
        try {
            to.patience().start();
            to.answer().complete(search(c, key, to.patience().limit(base.get().parts())));
        } catch (CancellationException e) {
            to.answer().complete(PlanSearch.ENDED);
        } catch (RuntimeException | Error e) {
            to.answer().completeExceptionally(e);
        }
    }

    private PlanSearch search(Case c, Key key, Calculations parts) {
        Checker checker = new Checker(base.get().rulebase(), parts);
        CheckOptions plain = CheckOptions.USUAL.with(Doubting.NONE);
        CheckOptions options = c.date().known() ? plain : plain.on(key.day());
        WhatIf found = new Search(checker.rulebase(), parts).of(c, key.version(), options);
        List<PlanSearch.Warning> warnings = found.outlooks().stream()
                .map(o -> new PlanSearch.Warning(
                        o,
                        Stream.of(o.single(), o.set())
                                .flatMap(Optional::stream)
                                .map(s -> offer(s, c, key.version(), checker, options))
                                .toList()))
                .toList();
        return new PlanSearch(
                PlanSearch.State.DONE,
                Optional.of(found),
                warnings,
                found.together().map(s -> offer(s, c, key.version(), checker, options)));
    }

    private static PlanOffer offer(Suggestion s, Case c, String version, Checker checker, CheckOptions options) {
        List<String> typed = s.changes().stream()
                .map(x -> x.pointer() + "=" + PlanOffer.typed(x))
                .toList();
        try {
            Difference d = TypedChanges.difference(c, version, typed, checker, options);
            return new PlanOffer(s, d);
        } catch (TypedChanges.Refused e) {
            throw new IllegalStateException("a suggestion can be typed: " + e.getMessage(), e);
        }
    }
}
