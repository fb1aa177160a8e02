package dev.fairlead.web.page;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.verdict.Rulebase;
import java.time.LocalDate;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** How the pages have a case checked. The rulebase may still be on its way: whoever needs it waits for it. */
public final class Checks {
    private final CompletableFuture<Checker> checker;

    private Checks(CompletableFuture<Checker> checker) {
        this.checker = checker;
    }

    /** Checks by that checker. */
    public static Checks by(Checker checker) {
        return new Checks(CompletableFuture.completedFuture(checker));
    }

    /** Checks by a checker that is made while the server starts. */
    public static Checks loading(Supplier<Checker> made) {
        CompletableFuture<Checker> checker = new CompletableFuture<>();
        Thread loading = new Thread(
                () -> {
                    try {
                        checker.complete(made.get());
                    } catch (RuntimeException | Error e) {
                        checker.completeExceptionally(e);
                    }
                },
                "loading the rulebase");
        loading.setDaemon(true);
        loading.start();
        return new Checks(checker);
    }

    /** True once nobody has to wait for the checker. */
    public boolean ready() {
        return checker.isDone();
    }

    /** The checker, once it is there; throws what kept it from being made. */
    public Checker checker() {
        try {
            return checker.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }

    /**
     * Checks a case that was read, for its own day, or for {@code today} when it names none.
     *
     * @param chances whether chances of another outcome are worked out too, which takes many times as long as all else
     */
    public Checked check(CaseReading reading, String version, LocalDate today, boolean chances) {
        Case c = reading.value().orElseThrow();
        CheckOptions usual = chances ? CheckOptions.USUAL : CheckOptions.USUAL.with(Doubting.NONE);
        CheckOptions options = c.date().known() ? usual : usual.on(today);
        return checker().check(c, version, reading.doubts(), options);
    }

    /** Checks a case that was read as if it had reached at least that stage, for its own day or for {@code today}. */
    public Checked checkUpTo(CaseReading reading, String version, LocalDate today, Stage least) {
        Case c = reading.value().orElseThrow();
        CheckOptions plain = CheckOptions.USUAL.with(Doubting.NONE);
        CheckOptions options = c.date().known() ? plain : plain.on(today);
        boolean there = options.reach(c).judged().hasReached(least);
        return checker().check(c, version, reading.doubts(), there ? options : options.at(least));
    }

    /** The criteria in force. */
    public Catalogue catalogue() {
        return checker().rulebase().catalogue();
    }

    /** The criteria that come with the program, before a site's overlay. */
    public Catalogue standard() {
        return Rulebase.builtIn().catalogue();
    }
}
