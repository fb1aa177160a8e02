package dev.fairlead.measure.wire;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Remembers the answers to the latest questions, up to a limit; safe to share between threads. */
final class Memo<Q, A> {
    private final Function<Q, A> work;
    private final Map<Q, A> known;

    Memo(int limit, Function<Q, A> work) {
        this.work = work;
        this.known = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
                return size() > limit;
            }
        };
    }

    /** The answer; two threads that ask the same new question at once both work it out, which is quicker than waiting in line for others. */
    A of(Q question) {
        synchronized (known) {
            A answer = known.get(question);
            if (answer != null) {
                return answer;
            }
        }
        A answer = work.apply(question);
        synchronized (known) {
            known.put(question, answer);
        }
        return answer;
    }
}
