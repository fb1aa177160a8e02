package dev.fairlead.web.plan;

import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.position.IncisorPrediction;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;

/** How long a search may take. Whatever is tried is measured anew, so a search ends at the next plan that it tries. */
final class TimeLimit {
    private final long most;
    private volatile long end = Long.MAX_VALUE;
    private volatile boolean over;

    /** {@code seconds} from {@link #start}. */
    TimeLimit(long seconds) {
        most = TimeUnit.SECONDS.toNanos(seconds);
    }

    void start() {
        end = System.nanoTime() + most;
    }

    /** Nobody waits for the answer any more. */
    void end() {
        over = true;
    }

    /** The same measurements for as long as there is patience; after that each throws {@link CancellationException}. */
    Calculations limit(Calculations parts) {
        IncisorPrediction position = parts.position();
        return parts.predicting((readings, book) -> {
            if (over || end != Long.MAX_VALUE && System.nanoTime() - end > 0) {
                throw new CancellationException("the search was ended");
            }
            return position.after(readings, book);
        });
    }
}
