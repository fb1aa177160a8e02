package dev.fairlead.measure.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LatestAnswersTest {
    private final AtomicInteger worked = new AtomicInteger();

    @Test
    void whatIsBeingWorkedOutIsWaitedForAndNotWorkedOutTwice() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        LatestAnswers<String, Integer> memo = new LatestAnswers<>(4, q -> {
            begun.countDown();
            await(go);
            return worked.incrementAndGet();
        });
        FutureTask<Integer> first = ask(memo, "a");
        await(begun);
        FutureTask<Integer> second = ask(memo, "a");
        assertThat(second.isDone()).isFalse();
        go.countDown();
        assertThat(first.get()).isEqualTo(1);
        assertThat(second.get()).isEqualTo(1);
        assertThat(memo.of("a")).isEqualTo(1);
        assertThat(worked).hasValue(1);
    }

    @Test
    void keepsTheLatestQuestionsAlone() {
        LatestAnswers<Integer, Integer> memo = new LatestAnswers<>(2, q -> worked.incrementAndGet());
        memo.of(1);
        memo.of(2);
        memo.of(1);
        memo.of(3);
        assertThat(memo.of(1)).isEqualTo(1);
        assertThat(memo.of(2)).isEqualTo(4);
    }

    @Test
    void aFailureIsToldAsItIsAndNotKept() {
        LatestAnswers<String, Integer> memo = new LatestAnswers<>(2, q -> {
            if (worked.incrementAndGet() == 1) {
                throw new IllegalArgumentException("no answer to " + q);
            }
            return worked.get();
        });
        assertThatThrownBy(() -> memo.of("a"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no answer to a");
        assertThat(memo.of("a")).isEqualTo(2);
    }

    private static <Q, A> FutureTask<A> ask(LatestAnswers<Q, A> memo, Q question) {
        FutureTask<A> task = new FutureTask<>(() -> memo.of(question));
        new Thread(task).start();
        return task;
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
