package dev.fairlead.web.access;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * One device at a time is let in by a code of six digits that holds for five minutes and once. Wrong codes have to wait
 * longer each time; five of them end the code, and nobody can pair for a quarter of an hour: a guesser has five tries
 * in a million for each code that somebody asks for.
 */
public final class Pairing {
    /** So long a code holds. */
    public static final Duration HOLDS = Duration.ofMinutes(5);

    static final Duration LOCKED = Duration.ofMinutes(15);
    static final int TRIES = 5;
    private static final int CODES = 1_000_000;
    private static final SecureRandom RANDOM = new SecureRandom();

    /** A device that is waited for. */
    public record Offer(String code, String name, DeviceRole role, Instant until) {}

    /** What became of a code that was typed: the offer, or why there is none. */
    public record Answer(Optional<Offer> offer, String refused) {}

    private final Clock clock;
    private Optional<Offer> waiting = Optional.empty();
    private int wrong;
    private Instant notBefore = Instant.MIN;
    private Instant lockedUntil = Instant.MIN;

    public Pairing(Clock clock) {
        this.clock = clock;
    }

    /** Waits for a device of that name and role; the code before it holds no more. Empty while pairing is locked. */
    public synchronized Optional<Offer> offer(String name, DeviceRole role) {
        Instant now = clock.instant();
        if (now.isBefore(lockedUntil)) {
            return Optional.empty();
        }
        wrong = 0;
        notBefore = now;
        waiting = Optional.of(new Offer("%06d".formatted(RANDOM.nextInt(CODES)), name, role, now.plus(HOLDS)));
        return waiting;
    }

    /** The offer that holds now. */
    public synchronized Optional<Offer> waiting() {
        return waiting.filter(o -> clock.instant().isBefore(o.until()));
    }

    /** Takes a code that was typed. */
    public synchronized Answer take(String code) {
        Instant now = clock.instant();
        if (now.isBefore(lockedUntil)) {
            return refused("Pairing is locked after " + TRIES + " wrong codes. Try again in "
                    + (Duration.between(now, lockedUntil).toMinutes() + 1) + " minutes.");
        }
        if (waiting().isEmpty()) {
            return refused("No device is waited for, or the code ran out. Ask for a new code.");
        }
        if (now.isBefore(notBefore)) {
            return refused("Too soon after a wrong code. Wait a few seconds, then try again.");
        }
        if (!Sessions.same(waiting.get().code(), code.replaceAll("\\s", ""))) {
            wrong++;
            if (wrong >= TRIES) {
                waiting = Optional.empty();
                lockedUntil = now.plus(LOCKED);
                return refused("That was the fifth wrong code: pairing is locked for " + LOCKED.toMinutes()
                        + " minutes, and a new code is needed then.");
            }
            notBefore = now.plusSeconds(1L << wrong);
            return refused("That is not the code. " + (TRIES - wrong) + (TRIES - wrong == 1 ? " try is" : " tries are")
                    + " left.");
        }
        Optional<Offer> taken = waiting;
        waiting = Optional.empty();
        return new Answer(taken, "");
    }

    private static Answer refused(String why) {
        return new Answer(Optional.empty(), why);
    }
}
